#pragma once

#include "baize/stats/mixed.h"

#include <vector>

namespace baize::stats {

struct MixedContrast {
  Summary summary;
  MixedCoefficient estimate;
};

/// weights . coefficients with its standard error and Satterthwaite's degrees of
/// freedom, 2 v^2 / (g' A g): v its variance, g the change of v with each variance
/// parameter, A their covariance. One weight for each coefficient.
/// Refuses "fit_not_usable", "lengths_differ", "not_finite", "option_out_of_range";
/// degenerate "all_zero" where every weight is 0.
MixedContrast mixed_contrast(const MixedFit& fit, const std::vector<double>& weights,
                             const ConfidenceOptions& options = {});

struct MixedFTest {
  Summary summary;
  double f = 0;
  int df = 0; ///< contrasts that are independent of each other
  double error_df = 0;
  double p = 1;
};

/// Whether several contrasts are all 0: F of the Wald kind. Its error degrees of
/// freedom join those of the independent one-row contrasts, so that F has the mean
/// that theirs imply. Fai AHT, Cornelius PL (1996) J. Stat. Comput. Simul.
/// 54:363-378. Contrasts that repeat others do not count twice.
/// Refuses as mixed_contrast, and "too_few" (one row needed).
MixedFTest mixed_f_test(const MixedFit& fit, const std::vector<std::vector<double>>& contrasts);

struct LikelihoodRatio {
  Summary summary;
  double statistic = 0; ///< twice the difference of the log-likelihoods, 0 or more
  int df = 0;           ///< difference of the counts of parameters
  double p = 1;         ///< by chi-squared
};

/// Compares two fits of the same y, the smaller model a special case of the larger
/// one; that it is one cannot be checked here. Where they differ by a variance that
/// the smaller sets to 0, p is too large (Self SG, Liang KY (1987) J. Am. Stat.
/// Assoc. 82:605-610). Refuses "fit_not_usable", "fits_differ" (other counts of
/// rows; restricted fits, whose likelihoods compare only with equal fixed columns;
/// no more parameters in the larger; a larger model that fits worse).
LikelihoodRatio likelihood_ratio(const MixedFit& smaller, const MixedFit& larger);

} // namespace baize::stats
