#pragma once

#include "baize/answers/json.h"
#include "baize/services/greens_review.h"

namespace baize::answers {

Json to_json(const services::GreensReview& review);

} // namespace baize::answers
