#pragma once

#include "baize/answers/json.h"
#include "baize/services/report_data.h"

namespace baize::answers {

/// What the report page carries inside itself.
Json to_json(const services::ReportData& data);

} // namespace baize::answers
