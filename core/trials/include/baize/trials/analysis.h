#pragma once

#include "baize/trials/checks.h"
#include "baize/trials/ordinal.h"
#include "baize/trials/repeated.h"
#include "baize/trials/time_back.h"

namespace baize::trials {

struct AnalysisOptions {
  double confidence = 0.95;          ///< above 0, below 1
  std::optional<units::Day> treated; ///< day of the treatment; absent: no time back
  double standard = 8;               ///< a plot is back at this value or above it
  /// Ordinary visits, which see plots on different days: the area runs over the days
  /// that all plots share, its ends bridged by a straight line where a plot was not seen.
  bool ordinary_visits = false;
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct DayAnalysis {
  units::Day day;
  ValueAnalysis analysis;
};

/// A trial's records compared, from the whole to the parts.
struct Analysis {
  stats::Summary summary; ///< of `overall`
  std::string quantity;
  int records = 0;
  /// One value for each plot: the height of the area under its values through time
  /// (area by trapezoids over its duration), or the value where there is one day only.
  /// Visits before the treatment are left out.
  ValueAnalysis overall;
  int interpolated = 0; ///< values missing between two visits, bridged by a straight line
  int area_lost = 0;    ///< plots without a value on the first or last day, left out of it
  std::vector<DayAnalysis> days;
  Repeated repeated;            ///< over the days after the treatment
  std::optional<TimeBack> back; ///< where the day of the treatment is known
  Ordinal ordinal;              ///< scores as ranks, beside the means
  Checks checks;                ///< of `overall`
};

/// Everything at once. Refuses "option_out_of_range", "too_few" (no visit after the
/// treatment) and as analyse_values. The plan has no problem; the values come from
/// gather(). Evidence: randomised.
Analysis analyse(const Plan& plan, const Values& all, const AnalysisOptions& options = {});

} // namespace baize::trials
