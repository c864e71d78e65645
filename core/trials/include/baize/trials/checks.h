#pragma once

#include "baize/trials/comparison.h"

namespace baize::trials {

/// Whether what the analysis assumes fits the values.
struct Checks {
  std::vector<double> residuals; ///< by plot: what the model leaves in the lowest stratum
  /// Is the scatter the same under every treatment? Levene's test on distances from
  /// the median (Brown MB, Forsythe AB (1974) J. Am. Stat. Assoc. 69:364-367).
  std::optional<double> spread_p;
  /// Anderson-Darling statistic with mean and deviation estimated, times
  /// 1 + 0.75/n + 2.25/n^2; above 0.752 in one of 20 normal samples (D'Agostino RB,
  /// Stephens MA (1986) Goodness-of-Fit Techniques, table 4.7). From 8 values on.
  std::optional<double> normality;
  bool normal_enough = true;
  /// The plot furthest off, and the chance that the furthest of so many plots is so
  /// far off (t of the deleted residual, Bonferroni).
  int outlier = 0;
  double outlier_p = 1;
};

inline constexpr double kNormalityLimit = 0.752;

/// values: one for each plot, lost ones filled. residual_df: of the lowest stratum.
/// The plan has no problem.
Checks check_assumptions(const Plan& plan, const std::vector<double>& values, int residual_df);

} // namespace baize::trials
