#pragma once

#include "baize/stats/aft.h"
#include "baize/stats/interval.h"
#include "baize/trials/values.h"

#include <optional>

namespace baize::trials {

/// When a plot was back: after the last visit below the standard, by the first one
/// at or above it. Days since the treatment.
struct PlotBack {
  int plot = 0;
  std::string treatment;
  stats::CensoredTime days;
  bool never_below = false; ///< the first visit already found it at the standard
};

struct TreatmentBack {
  std::string treatment;
  double median = 0; ///< days until half of such plots are back
  stats::Interval interval;
  int plots = 0;
  int not_back = 0; ///< plots still below at the last visit
};

struct BackDifference {
  std::string first;
  std::string second;
  double days = 0; ///< median of first less median of second
  stats::Interval interval;
  double p = 1;
};

struct TimeBack {
  stats::Summary summary;
  std::vector<PlotBack> plots;
  std::vector<TreatmentBack> treatments;
  std::vector<BackDifference> differences; ///< all pairs
  /// Treatments left out of the model: none of their plots was seen below the
  /// standard, or none was back by the last visit.
  std::vector<std::string> never_below;
  std::vector<std::string> never_back;
  double df = 0;       ///< of the t distribution that the intervals use
  bool blocks = false; ///< blocks have a spread of their own
};

struct TimeBackOptions {
  units::Day treated;       ///< day on which the plots were treated
  double standard = 8;      ///< a plot is back at this value or above it
  double confidence = 0.95; ///< above 0, below 1
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Did a treatment come back earlier? Log-logistic accelerated failure time
/// regression of the interval-censored days of the plots on treatment, with a normal
/// effect of blocks (stats/aft_frailty.h; without, where there are no blocks or
/// their spread is 0). Medians and their differences by the delta method. Plots are
/// few, so intervals take Student's t with plots less treatments less blocks plus 1
/// degrees of freedom (of one treatment alone: plots less 1) instead of the normal: more careful, a
/// choice of ours. Of a second treatment each pair is a treatment of its own. Treatments without a
/// plot that was seen below, or without one that was back, have no time that could
/// be estimated: they are named and left out.
/// Refuses "option_out_of_range" and "too_few" (visits after the treatment); else as
/// stats::fit_aft, above all "all_censored" and "not_determined".
TimeBack time_back(const Plan& plan, const Values& values, const TimeBackOptions& options);

} // namespace baize::trials
