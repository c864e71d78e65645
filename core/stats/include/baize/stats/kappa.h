#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"

#include <limits>
#include <optional>
#include <span>
#include <vector>

namespace baize::stats {

/// A square table: what the first observer said in rows, the second in columns;
/// counts, or the weight of each pair of answers.
using Table = std::vector<std::vector<double>>;

/// How much two different answers count as disagreement.
enum class KappaWeights {
  none,     ///< any difference counts 1
  linear,   ///< the difference
  quadratic ///< its square
};

/// Agreement beyond chance, 1 for complete, 0 as by chance.
struct Kappa {
  double n = 0; ///< items judged
  double value = std::numeric_limits<double>::quiet_NaN();
  double observed = std::numeric_limits<double>::quiet_NaN(); ///< agreement found, 0 to 1
  double expected = std::numeric_limits<double>::quiet_NaN(); ///< agreement by chance
  double se = std::numeric_limits<double>::quiet_NaN();
  double null_se = std::numeric_limits<double>::quiet_NaN(); ///< were kappa 0, for a test of that
  /// tanh(atanh value -+ t s / (1 - value^2)): s the standard error by leaving one item
  /// out at a time, t on n - 1 degrees of freedom (jackknife: Efron and Tibshirani (1993)
  /// An Introduction to the Bootstrap, ch. 11). With value -+ 1.96 se, which is for many
  /// items, 12 balls are covered 81 times in 100; so 94 to 96 (docs/evidence/agreement.md).
  /// Absent in complete agreement, where counts are not whole, and where without one
  /// item an observer gave one answer only.
  std::optional<Interval> interval;
  Summary summary;
};

/// Counts pairs of whole scores from `lowest` to `highest`. A row for every score
/// in that range, used or not, which changes no kappa. Refuses "lengths_differ"
/// and "score_out_of_range".
units::Result<Table> cross_table(std::span<const int> first, std::span<const int> second,
                                 int lowest, int highest);

/// With disagreement v and proportions p: 1 - sum p[i][j] v[i][j] / sum p[i.] p[.j]
/// v[i][j], and the standard errors for large samples. `disagreement` holds 0 in
/// its diagonal and may be lopsided. Refuses "not_square", "lengths_differ",
/// "not_finite", "below_zero", "too_few" (below 2 items), "option_out_of_range";
/// degenerate "all_equal" where an observer gave one and the same answer
/// throughout.
/// Source: Cohen (1968) Psychol. Bull. 70:213-220; standard errors Fleiss, Cohen
/// and Everitt (1969) Psychol. Bull. 72:323-327.
Kappa weighted_kappa(const Table& counts, const Table& disagreement,
                     const ConfidenceOptions& options = {});
Kappa cohen_kappa(const Table& counts, KappaWeights weights, const ConfidenceOptions& options = {});

} // namespace baize::stats
