#pragma once

#include "baize/answers/json.h"
#include "baize/services/work_review.h"

namespace baize::answers {

Json to_json(const services::WorkReview& review);
/// {works: [...]}.
Json to_json(const std::vector<services::WorkLine>& lines);

} // namespace baize::answers
