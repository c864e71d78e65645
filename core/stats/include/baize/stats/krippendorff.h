#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"

#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

namespace baize::stats {

/// What a difference between two values c and k counts.
enum class AlphaMetric {
  nominal,  ///< 1
  ordinal,  ///< (values given from c to k, the ends half)^2
  interval, ///< (c - k)^2
  ratio     ///< ((c - k) / (c + k))^2, values 0 or more
};

/// Agreement of any number of observers, with gaps: 1 complete, 0 as by chance.
struct Alpha {
  std::size_t items = 0;  ///< with two values or more; the others cannot tell
  std::size_t values = 0; ///< in those items
  double value = std::numeric_limits<double>::quiet_NaN();
  double observed = std::numeric_limits<double>::quiet_NaN(); ///< disagreement, mean within items
  double expected = std::numeric_limits<double>::quiet_NaN(); ///< disagreement by chance
  /// By leaving out one item at a time; absent with fewer than 3 items, or where an
  /// item left out leaves all values equal. Common practice; the source of alpha
  /// draws random samples instead.
  std::optional<double> se;
  std::optional<Interval> interval; ///< value -+ t se with items - 1 degrees of freedom, up to 1
  Summary summary;
};

/// One row for each item, one cell for each observer; an empty cell was not
/// scored. Refuses "too_few" (no item with two values, or below 2 observers),
/// "not_finite", "below_zero" (ratio only), "option_out_of_range"; degenerate
/// "all_equal" where all values that count are the same.
/// Source: Krippendorff (2004) Content Analysis, 2nd ed., ch. 11.
Alpha krippendorff_alpha(const std::vector<std::vector<std::optional<double>>>& ratings,
                         AlphaMetric metric, const ConfidenceOptions& options = {});

} // namespace baize::stats
