#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"

#include <vector>

namespace baize::stats {

/// The largest of several |t| that share a control: P(max |T_i| >= t) where
///
///   P(max < t) = mean over s of integral over z of phi(z) product of
///                Phi((l_i z + t s) / r_i) - Phi((l_i z - t s) / r_i),
///   r_i = sqrt(1 - l_i^2), the correlation of T_i and T_j being l_i l_j,
///
/// with s the root of chi-squared over its degrees of freedom; one-sided: the largest
/// T_i and Phi((l_i z + t s) / r_i) alone. Both integrals by the trapezoidal rule where
/// it converges exponentially. Dunnett CW (1955) J. Am. Stat. Assoc. 50:1096-1121;
/// Dunnett CW, Sobel M (1955) Biometrika 42:258-260.
///
/// lambda: sqrt(n_i / (n_i + n_0)), each above 0 and below 1, at most 200. df: 1 to
/// 1e6 or infinity. t: 0 or more (two-sided), any (one-sided). Else NaN. About 1e-11
/// relative.
double dunnett_upper(double t, const std::vector<double>& lambda, double df, bool two_sided = true);
/// t with that probability, 0 < alpha < 1 (one-sided: below 1/2).
double dunnett_critical(double alpha, const std::vector<double>& lambda, double df,
                        bool two_sided = true);

/// What is asked of the treatments.
enum class Against {
  differs, ///< from the control, either way
  greater, ///< than the control
  less
};

struct DunnettOptions {
  Against alternative = Against::differs;
  double confidence = 0.95; ///< of all intervals together; above 0 (one-sided: 1/2), below 1
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct DunnettComparison {
  std::size_t treatment = 0; ///< its place among the means
  double difference = 0;     ///< treatment less control
  double standard_error = 0;
  double t = 0;
  double p = 1;      ///< adjusted for all comparisons
  Interval interval; ///< together for all; one-sided: infinite on the side not asked for
};

struct Dunnett {
  Summary summary;
  std::vector<DunnettComparison> comparisons; ///< in order of the means, control left out
  double critical = 0;                        ///< of t
};

/// Compares every mean with one control, exact for unequal counts.
/// counts: values behind each mean, 1 or more. variance: residual mean square, above 0,
/// with `df` degrees of freedom (1 to 1e6). control: place of the control.
/// Refuses "option_out_of_range", "too_few" (2 means), "too_many" (201),
/// "lengths_differ", "not_finite", "count_out_of_range", "variance_out_of_range",
/// "df_out_of_range", "no_such_control".
Dunnett dunnett(const std::vector<double>& means, const std::vector<int>& counts,
                std::size_t control, double variance, double df,
                const DunnettOptions& options = {});

} // namespace baize::stats
