#include "baize/units/number.h"
#include "trial_words.h"
#include "wording.h"

namespace baize::services {
namespace {

using units::show_number;

std::string p_text(double p) {
  return p < 0.001 ? "p below 0.001" : "p = " + show_number(p, p < 0.1 ? 3 : 2);
}

void missing_notes(const trials::Analysis& analysis, int rows_without_value,
                   std::vector<std::string>& notes) {
  if (rows_without_value > 0) {
    notes.push_back(counted(rows_without_value, "row") +
                    " of the records had no value yet and counted as not measured.");
  }
  if (analysis.interpolated > 0) {
    notes.push_back(
        counted(analysis.interpolated, "missing visit of a plot", "missing visits of a plot") +
        " between two others " + std::string(was(analysis.interpolated)) +
        " bridged by a straight line for the whole-trial figures.");
  }
  if (analysis.overall.lost > 0) {
    notes.push_back(
        counted(analysis.overall.lost, "plot") + " without first or last visit " +
        std::string(was(analysis.overall.lost)) +
        " estimated by Yates' method, at the price of as many error degrees of freedom.");
  }
}

void check_notes(const trials::Analysis& analysis, std::vector<std::string>& notes) {
  const trials::Checks& checks = analysis.checks;
  constexpr double kLevel = 0.05;
  bool good = true;
  if (checks.spread_p && *checks.spread_p < kLevel) {
    good = false;
    notes.push_back("The scatter differs between treatments (" + p_text(*checks.spread_p) +
                    "): errors are shared by all and fit none well. Compare two treatments on "
                    "their own plots only, or trust the days back more.");
  }
  if (!checks.normal_enough) {
    good = false;
    notes.emplace_back("What is left over is not shaped like a normal curve: treat p near 0.05 as "
                       "undecided and look at the plots one by one.");
  }
  if (checks.outlier > 0 && checks.outlier_p < kLevel) {
    good = false;
    notes.push_back("Plot " + std::to_string(checks.outlier) + " lies far off (" +
                    p_text(checks.outlier_p) +
                    "): look for a slip of the pen or a sprinkler. Do not leave it out merely "
                    "because it does not fit.");
  }
  if (good && !checks.residuals.empty()) {
    notes.emplace_back("Scatter, shape and outliers: nothing speaks against the analysis.");
  }
}

void time_notes(const trials::Analysis& analysis, std::vector<std::string>& notes) {
  const trials::Repeated& repeated = analysis.repeated;
  if (!repeated.summary.usable) {
    return;
  }
  for (const trials::RepeatedTest& test : repeated.tests) {
    if (test.of == "treatment and day") {
      notes.push_back(
          (test.p_corrected < 0.05
               ? std::string("The treatments ran differently through time (")
               : std::string("That treatments ran differently through time is not shown "
                             "(")) +
          p_text(test.p_corrected) +
          "). Days of one plot are alike, so degrees of "
          "freedom were multiplied by " +
          show_number(repeated.epsilon, 2) +
          (repeated.lower_bound ? ", the most careful factor, as values are missing."
                                : " (Greenhouse-Geisser)."));
    }
  }
}

void back_notes(const trials::Analysis& analysis, const trials::AnalysisOptions& options,
                std::vector<std::string>& notes) {
  if (!analysis.back) {
    notes.emplace_back("Without the day of the treatment nothing is said of days back.");
    return;
  }
  if (!analysis.back->summary.usable) {
    notes.push_back("Days back cannot be compared: " +
                    units::sentence(analysis.back->summary.problem));
    return;
  }
  int never = 0;
  for (const trials::PlotBack& plot : analysis.back->plots) {
    never += plot.never_below ? 1 : 0;
  }
  std::string note = "Back means: the first visit at " + show_number(options.standard, 1) +
                     " or above after the treatment; between two visits nobody knows the day.";
  if (never > 0) {
    note += " " + counted(never, "plot") + " " + std::string(was(never)) +
            " at it on the first visit already.";
  }
  notes.push_back(note);
  for (const std::string& name : analysis.back->never_below) {
    notes.push_back(name + " was never seen below the standard, so it has no days back.");
  }
  for (const std::string& name : analysis.back->never_back) {
    notes.push_back(name + " was not back on any plot by the last visit.");
  }
}

/// The clearest pair as ranks, where one is clear after allowing for their number.
void rank_note(const trials::Analysis& analysis, std::vector<std::string>& notes) {
  const trials::Ordinal& ordinal = analysis.ordinal;
  if (!ordinal.summary.usable) {
    if (analysis.quantity == "score") {
      notes.push_back("As ranks the scores cannot be compared: " +
                      units::sentence(ordinal.summary.problem));
    }
    return;
  }
  constexpr double kLevel = 0.05;
  const trials::OddsRatio* clearest = nullptr;
  for (const trials::OddsRatio& one : ordinal.pairs) {
    const bool clear = one.p * static_cast<double>(ordinal.pairs.size()) < kLevel;
    clearest = clear && (clearest == nullptr || one.p < clearest->p) ? &one : clearest;
  }
  if (clearest == nullptr) {
    notes.emplace_back("Taken as ranks, with nothing assumed of how far 7 lies from 8, the "
                       "treatments cannot be told apart.");
    return;
  }
  const bool higher = clearest->odds > 1;
  const auto odds = [&](double value) { return higher ? value : 1 / value; };
  notes.push_back(
      "Taken as ranks, with nothing assumed of how far 7 lies from 8: the odds of a higher score "
      "were " +
      show_number(odds(clearest->odds), 1) + " times as great under " +
      (higher ? clearest->first : clearest->second) + " as under " +
      (higher ? clearest->second : clearest->first) + " (" +
      range(odds(higher ? clearest->interval.low : clearest->interval.high),
            odds(higher ? clearest->interval.high : clearest->interval.low), 1) +
      ").");
}

void interaction_note(const TrialAnalysisReview& review, std::vector<std::string>& notes) {
  for (const trials::Comparison& one : review.analysis.overall.comparisons) {
    if (one.of == "both together" && one.p < 0.05) {
      notes.push_back("What the second treatment does depends on the first (" + p_text(one.p) +
                      "): read the table of both together, not the means of each.");
    }
  }
}

} // namespace

std::vector<std::string> trial_notes(const TrialAnalysisReview& review, int rows_without_value,
                                     const trials::AnalysisOptions& options) {
  std::vector<std::string> notes;
  const trials::Analysis& analysis = review.analysis;
  missing_notes(analysis, rows_without_value, notes);
  if (!analysis.summary.usable) {
    return notes;
  }
  interaction_note(review, notes);
  time_notes(analysis, notes);
  back_notes(analysis, options, notes);
  rank_note(analysis, notes);
  for (const trials::ErrorDf& one : trials::error_df(review.plan)) {
    if (one.df < trials::kFewErrorDf) {
      notes.push_back("Only " + std::to_string(one.df) + " error degrees of freedom for " + one.of +
                      ": such a trial sees large differences only.");
    }
  }
  check_notes(analysis, notes);
  return notes;
}

} // namespace baize::services
