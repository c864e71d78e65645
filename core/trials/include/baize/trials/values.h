#pragma once

#include "baize/trials/plan.h"
#include "baize/units/day.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::trials {

/// One look at one plot, as it was written down.
struct Record {
  std::string trial; ///< empty: not said
  int plot = 0;      ///< the plot's number
  units::Day day;
  std::string quantity; ///< "score", or what else was read
  double value = 0;
  std::string place; ///< "records.csv line 12", for sentences
};

/// What was seen, plot by plot and day by day.
struct Values {
  std::string quantity;
  std::vector<units::Day> days; ///< rising
  /// by_day[d][p]: mean of that plot's records on that day; absent where there is none.
  std::vector<std::vector<std::optional<double>>> by_day;
  int records = 0;
};

/// Puts records to the plots of a plan. Several records of a plot and day are
/// averaged with equal weight. Refuses "no_records", "other_trial" (a record that
/// names another trial), "unknown_plot", "two_quantities", "score_out_of_range" (a
/// score outside 1 to 10) and "not_finite". The plan has no problem.
units::Result<Values> gather(const Plan& plan, const std::vector<Record>& records);

} // namespace baize::trials
