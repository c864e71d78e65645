#pragma once

#include "baize/answers/json.h"
#include "baize/green/work.h"

namespace baize::answers {

/// As it was written down; parameters in the units of the data dictionary.
Json to_json(const green::Work& work);

} // namespace baize::answers
