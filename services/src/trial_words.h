#pragma once

#include "baize/services/trial_analysis.h"

namespace baize::services {

/// Plan and records compared and put into words.
TrialAnswer review_trial(TrialReading reading, const std::string& records_name,
                         const trials::AnalysisOptions& options);
/// The answer in one sentence.
std::string trial_sentence(const TrialAnalysisReview& review);
/// Assumptions, missing plots, course through time: what to know and what to do.
std::vector<std::string> trial_notes(const TrialAnalysisReview& review, int rows_without_value,
                                     const trials::AnalysisOptions& options);

} // namespace baize::services
