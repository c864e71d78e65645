#pragma once

#include "baize/consistency/figures.h"
#include "baize/observers/estimate.h"
#include "baize/stats/summary.h"
#include "baize/units/problem.h"

#include <optional>
#include <vector>

namespace baize::consistency {

struct HourOptions {
  int noon = 12 * 60;       ///< minute of the day from which it is afternoon, 1 to 1439
  int days = 7;             ///< at most between the two visits, 0 to 31
  double confidence = 0.95; ///< above 0 and below 1
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Afternoon less morning at one green within days.
struct HourEffect {
  int score_pairs = 0;
  std::optional<observers::Estimate> score; ///< points
  int speed_pairs = 0;
  std::optional<observers::Estimate> speed; ///< metres
  stats::Summary summary;
};

/// Each afternoon visit beside the nearest morning visits before and after (their
/// mean, where there are both), so that a slow rise or fall of the green cancels.
/// Visits without a time, and pairs with a disruptive work between or on either day,
/// are left out. Intervals leave out one green at a time. Refuses
/// "option_out_of_range" and "too_few" (no pair).
/// Common practice, no source.
HourEffect hour_effect(const green::Records& records, const std::vector<VisitFigures>& visits,
                       const HourOptions& options = {});

} // namespace baize::consistency
