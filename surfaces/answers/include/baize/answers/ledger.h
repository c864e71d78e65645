#pragma once

#include "baize/answers/json.h"
#include "baize/recovery/ledger.h"

namespace baize::answers {

/// Counts with their bounds, and one word for each day.
Json to_json(const recovery::Ledger& ledger);

} // namespace baize::answers
