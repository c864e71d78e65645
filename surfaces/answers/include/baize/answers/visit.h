#pragma once

#include "baize/answers/json.h"
#include "baize/green/visit.h"

namespace baize::answers {

Json to_json(const green::Source& source);
/// With every roll, as it was written down.
Json to_json(const green::Visit& visit);

} // namespace baize::answers
