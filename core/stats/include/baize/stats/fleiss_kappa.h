#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"

#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

namespace baize::stats {

/// Agreement of many observers beyond chance, categories without order.
struct FleissKappa {
  std::size_t items = 0;
  double ratings = 0; ///< for each item
  double value = std::numeric_limits<double>::quiet_NaN();
  double observed = std::numeric_limits<double>::quiet_NaN(); ///< share of agreeing pairs
  double expected = std::numeric_limits<double>::quiet_NaN(); ///< by chance
  double se = std::numeric_limits<double>::quiet_NaN();       ///< items taken as a sample
  double null_se = std::numeric_limits<double>::quiet_NaN();  ///< were kappa 0, for a test of that
  /// value -+ t se with items - 1 degrees of freedom, up to 1. Absent where the se
  /// is 0, as with complete agreement.
  std::optional<Interval> interval;
  Summary summary;
};

/// One row for each item: how many observers chose each category. Each item has
/// the same number of ratings, 2 or more, by whichever observers. Refuses "too_few"
/// (below 2 items, categories or ratings), "lengths_differ", "not_finite",
/// "below_zero", "ratings_differ", "option_out_of_range"; degenerate "all_equal"
/// where every rating is the same.
/// Source: Fleiss (1971) Psychol. Bull. 76:378-382; null error Fleiss, Nee and
/// Landis (1979) Psychol. Bull. 86:974-977; error by linearisation over items,
/// Gwet (2021) Educ. Psychol. Meas. 81:781-790.
FleissKappa fleiss_kappa(const std::vector<std::vector<double>>& counts,
                         const ConfidenceOptions& options = {});

} // namespace baize::stats
