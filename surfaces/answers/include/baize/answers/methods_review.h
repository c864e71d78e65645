#pragma once

#include "baize/answers/json.h"
#include "baize/services/methods_review.h"

#include <string_view>

namespace baize::answers {

Json to_json(const services::MethodsReview& review);

std::string_view word(stats::AftDistribution value);
std::string_view word(compare::Evidence value);
std::string_view word(compare::NoMedian value);

} // namespace baize::answers
