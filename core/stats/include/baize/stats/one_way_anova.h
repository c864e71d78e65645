#pragma once

#include "baize/stats/summary.h"

#include <vector>

namespace baize::stats {

struct OneWayAnova {
  Summary summary;
  std::vector<double> means; ///< of each group
  int between_df = 0;        ///< groups less 1
  double between_ss = 0;
  double between_ms = 0;
  int within_df = 0; ///< values less groups
  double within_ss = 0;
  double within_ms = 0;
  double f = 0; ///< between_ms / within_ms
  double p = 1; ///< of an F so great or greater where all groups are alike
  double r_squared = 0;
  double residual_sd = 0; ///< square root of within_ms
};

/// Do the means of several groups differ? Fisher's analysis of variance for one
/// factor; assumes equal variances and independent values (one plot, one value).
/// Sums of squares about means, in long double, so that a large common part costs
/// no digits. NIST/SEMATECH e-Handbook of Statistical Methods, 7.4.3.
/// Refuses "too_few" (2 groups, 1 value in each, and 1 value more needed) and
/// "not_finite"; degenerate "no_spread" where no group has any spread.
OneWayAnova one_way_anova(const std::vector<std::vector<double>>& groups);

} // namespace baize::stats
