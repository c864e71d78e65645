#pragma once

#include "baize/answers/json.h"
#include "baize/services/season_review.h"

namespace baize::answers {

Json to_json(const services::SeasonReview& review);

} // namespace baize::answers
