#pragma once

#include "baize/services/trial_analysis.h"
#include "baize/services/trial_design.h"
#include "session.h"

namespace baize::cli {

void print_design(const Session& session, const services::TrialDesignReview& review);
/// As tables; with --csv the means of every day.
void print_analysis(const Session& session, const services::TrialAnalysisReview& review);

} // namespace baize::cli
