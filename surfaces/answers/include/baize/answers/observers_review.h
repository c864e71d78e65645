#pragma once

#include "baize/answers/json.h"
#include "baize/services/observers_review.h"

namespace baize::answers {

Json to_json(const services::ObserversReview& review);

} // namespace baize::answers
