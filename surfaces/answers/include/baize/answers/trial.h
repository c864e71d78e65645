#pragma once

#include "baize/answers/json.h"
#include "baize/services/trial_analysis.h"
#include "baize/services/trial_design.h"

namespace baize::answers {

/// Plan, map, sheet and what the trial could find.
Json to_json(const services::TrialDesignReview& review);
/// Sentence, tables of means, days, days back, checks.
Json to_json(const services::TrialAnalysisReview& review);

/// Reads the body of POST /api/v1/trials/design. Refuses "bad_json" and
/// "bad_trial" (a member that is unknown, missing or of another type).
units::Result<services::TrialRequest> read_trial_request(std::string_view body);

} // namespace baize::answers
