#pragma once

#include "call.h"

namespace baize::api {

/// The query's dry_run; false where it is absent. Refuses "bad_query".
units::Result<bool> dry_run_of(const Call& call);

} // namespace baize::api
