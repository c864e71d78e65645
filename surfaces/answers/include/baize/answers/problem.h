#pragma once

#include "baize/answers/json.h"
#include "baize/units/problem.h"

namespace baize::answers {

/// Its five parts.
Json to_json(const units::Problem& problem);
/// {problem, sentence}: a refusal, or one remark of a list.
Json with_sentence(const units::Problem& problem);

} // namespace baize::answers
