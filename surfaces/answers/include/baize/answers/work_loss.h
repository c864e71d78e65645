#pragma once

#include "baize/answers/json.h"
#include "baize/recovery/work_loss.h"

namespace baize::answers {

/// Recovery stands under each definition, in the order of recovery::kDefinitions.
Json to_json(const recovery::WorkLoss& loss);

} // namespace baize::answers
