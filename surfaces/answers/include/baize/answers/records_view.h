#pragma once

#include "baize/answers/json.h"
#include "baize/services/records_view.h"

namespace baize::answers {

Json to_json(const services::VisitPage& page);
Json to_json(const services::VisitDetail& detail);

} // namespace baize::answers
