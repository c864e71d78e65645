#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"

#include <cstddef>
#include <limits>
#include <optional>
#include <span>

namespace baize::stats {

/// Lin's concordance: how near pairs lie to the line of equality.
struct Concordance {
  std::size_t n = 0;
  /// 2 s12 / (s1^2 + s2^2 + (m1 - m2)^2), moments with divisor n; -1 to 1.
  double coefficient = std::numeric_limits<double>::quiet_NaN();
  double correlation = std::numeric_limits<double>::quiet_NaN(); ///< Pearson's: precision
  double accuracy = std::numeric_limits<double>::quiet_NaN(); ///< coefficient / correlation, to 1
  double scale_shift = std::numeric_limits<double>::quiet_NaN();    ///< s1 / s2
  double location_shift = std::numeric_limits<double>::quiet_NaN(); ///< (m1 - m2) / sqrt(s1 s2)
  /// By Fisher's z; absent where the pairs lie on a line, which leaves no scatter.
  std::optional<double> z_se;
  std::optional<Interval> interval;
  Summary summary;
};

/// The same items in the same order. Refuses "lengths_differ", "too_few" (below
/// 3), "not_finite", "option_out_of_range"; degenerate "all_equal" where one of
/// the two never changes.
/// Source: Lin (1989) Biometrics 45:255-268, standard error as corrected in (2000)
/// Biometrics 56:324-325.
Concordance concordance(std::span<const double> first, std::span<const double> second,
                        const ConfidenceOptions& options = {});

} // namespace baize::stats
