#pragma once

#include "baize/answers/json.h"
#include "baize/services/consistency_review.h"

#include <string_view>

namespace baize::answers {

std::string_view word(consistency::DirectionFinding value);
Json to_json(const services::ConsistencyReview& review);

} // namespace baize::answers
