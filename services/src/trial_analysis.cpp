#include "baize/services/trial_analysis.h"

#include "trial_words.h"

namespace baize::services {

TrialAnswer analyse_trial(const ReceivedFile& plan, const ReceivedFile& records,
                          const trials::AnalysisOptions& options, const TrialFiles& files) {
  return review_trial(files.read(plan, records), records.name, options);
}

TrialAnswer review_trial(TrialReading reading, const std::string& records_name,
                         const trials::AnalysisOptions& options) {
  TrialAnswer answer;
  if (!reading.good()) {
    answer.problems = std::move(reading.problems);
    return answer;
  }
  const auto values = trials::gather(reading.plan, reading.records);
  if (!values) {
    answer.problems.push_back(values.error());
    if (answer.problems.front().place.empty()) {
      answer.problems.front().place = records_name;
    }
    return answer;
  }
  TrialAnalysisReview review;
  review.analysis = trials::analyse(reading.plan, *values, options);
  if (review.analysis.summary.termination == stats::Termination::refused) {
    answer.problems.push_back(review.analysis.summary.problem);
    return answer;
  }
  review.plan = std::move(reading.plan);
  review.evidence = "randomised";
  review.sentence = trial_sentence(review);
  review.notes = trial_notes(review, reading.rows_without_value, options);
  answer.review = std::move(review);
  return answer;
}

} // namespace baize::services
