#pragma once

#include "baize/services/trial_files_port.h"
#include "baize/trials/analysis.h"

namespace baize::services {

/// A trial's answer.
struct TrialAnalysisReview {
  std::string sentence; ///< the answer, first
  std::string evidence; ///< "randomised": treatments were drawn by lot
  trials::Plan plan;
  trials::Analysis analysis;
  std::vector<std::string> notes; ///< what else to know, in plain words
};

/// Reads plan and records and compares the treatments. All problems of the files at
/// once, where there are some; else the analysis. Refuses also as trials::gather and
/// trials::analyse; where the records cannot answer (all equal) the review says so in
/// its sentence and `analysis.summary` is not usable.
struct TrialAnswer {
  std::optional<TrialAnalysisReview> review;
  std::vector<units::Problem> problems;
};
TrialAnswer analyse_trial(const ReceivedFile& plan, const ReceivedFile& records,
                          const trials::AnalysisOptions& options, const TrialFiles& files);

} // namespace baize::services
