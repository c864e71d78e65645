#pragma once

#include "baize/stats/summary.h"
#include "baize/units/problem.h"

#include <optional>

namespace baize::observers {

struct NeededOptions {
  double sd = 1;            ///< of one difference, in points, above 0 and below 10
  double half_width = 0.25; ///< wanted, to either side, in points, above 0 and below 10
  double multiplier = 1.96; ///< sds from the bias to a limit, above 0 and below 10
  double confidence = 0.95; ///< above 0 and below 1
  int balls = 6;            ///< of one session, 1 to 99
  double likeness = 0;      ///< share of the variance that a session has in common, 0 to 1
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// How many shared balls bias and limits take to be known to -+ half_width.
struct Needed {
  int balls_for_bias = 0;
  int sessions_for_bias = 0;
  int balls_for_limits = 0;
  int sessions_for_limits = 0;
  double design_effect = 1; ///< 1 + (balls - 1) likeness: how many balls do the work of one
  stats::Summary summary;
};

/// Bias: n = (z s / w)^2. Limits: the least n with z s sqrt(1/n + m^2 / (2 (n - 1)))
/// at most w. Both times the design effect, rounded up. Refuses "option_out_of_range"
/// and "too_large" (more than a million balls).
/// Source: Bland and Altman (1986) Lancet i:307-310, (1999) Stat. Methods Med. Res.
/// 8:135-160; design effect Kish (1965) Survey Sampling, 5.4.
Needed needed(const NeededOptions& options);

} // namespace baize::observers
