#pragma once

#include "baize/observers/estimate.h"
#include "baize/observers/shared_table.h"
#include "baize/stats/krippendorff.h"
#include "baize/stats/summary.h"

#include <string>
#include <vector>

namespace baize::observers {

/// One observer against the mean of the others over the same balls, in a quarter.
struct QuarterLean {
  int year = 0;
  int quarter = 1; ///< 1 to 4
  int sessions = 0;
  int balls = 0;
  Estimate bias;
};

/// Does the difference change? The sessions' mean differences on time, a straight
/// line by least squares; every session counts alike.
struct Trend {
  double per_year = 0; ///< points
  double se = 0;
  stats::Interval interval;
  double p = 1; ///< two-sided, of a slope so far from 0 where there is none
};

struct Lean {
  std::string observer;
  int sessions = 0;
  int balls = 0;
  Estimate bias; ///< mean of own score less the mean of the others', over runs
  std::vector<QuarterLean> quarters;
  std::optional<Trend> trend; ///< absent below three sessions, or all on one day
  stats::Summary summary;
};

/// What makes up for the lean: to be added to the observer's scores where somebody
/// asks for it, never unasked. Absent while the lean has no interval.
std::optional<Estimate> correction(const Lean& lean);

/// Refuses "unknown_observer", "no_shared_rolls" and "option_out_of_range"
/// (confidence). Pairs with no common partner are compared with their own partners
/// only: a lean is against those who stood beside, not against a truth.
Lean lean_of(const SharedTable& table, const std::string& observer, double confidence = 0.95);

/// Krippendorff's alpha of all observers together, with gaps: over single balls
/// (ordinal) or runs (interval). The interval leaves out sessions, in at most 50
/// blocks of neighbouring days.
struct GroupAlpha {
  int items = 0;
  std::optional<Estimate> estimate;
  stats::Summary summary;
};
GroupAlpha group_alpha(const SharedTable& table, stats::AlphaMetric metric,
                       double confidence = 0.95);

} // namespace baize::observers
