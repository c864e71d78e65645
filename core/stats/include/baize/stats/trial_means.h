#pragma once

#include "baize/stats/designed_trial.h"
#include "baize/stats/interval.h"
#include "baize/stats/pair_difference.h"

namespace baize::stats {

struct TrialMean {
  std::vector<int> level; ///< of each factor of the table, as the trial has them
  double mean = 0;        ///< lost plots filled
  int plots = 0;          ///< with a value
};

struct TrialMeans {
  Summary summary;
  std::vector<TrialMean> means;            ///< in order of level, the last factor running fastest
  std::vector<PairDifference> differences; ///< all pairs
};

/// A table of treatment means with the right standard error for each comparison.
/// factors: places in `treatments`, ascending; of one treatment or of several.
///
/// The variance of a difference is the sum over strata of the residual mean square
/// times the squared length of the part of the comparison that lies in the stratum:
/// two subplot treatments of one whole plot are compared with the subplot error,
/// of different whole plots with both. Degrees of freedom of such a mixture by
/// Satterthwaite FE (1946) Biometrics Bull. 2:110-114. With lost plots the length is
/// that of the comparison as a sum of the values that are there, so that it is exact
/// where only one stratum is concerned. Cochran WG, Cox GM (1957) Experimental
/// Designs, 7.16 for the split plot.
///
/// Refuses what `trial_anova` refuses, "no_such_factor" and "too_many" (200 means);
/// degenerate "no_residual" where a comparison's stratum has none.
TrialMeans trial_means(const DesignedTrial& trial, const std::vector<std::size_t>& factors,
                       const TrialOptions& options = {});

struct TrialContrast {
  Summary summary;
  double estimate = 0;
  double standard_error = 0;
  double df = 0;
  double t = 0;
  double p = 1; ///< two-sided
  Interval interval;
};

struct ContrastOptions {
  TrialOptions trial;
  double confidence = 0.95; ///< above 0 and below 1
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// A comparison thought of before: the sum of coefficient times mean over the table
/// of `factors`, in the order of `trial_means`.
/// Refuses also "lengths_differ" and "not_a_contrast" (the coefficients must add up
/// to 0 and not all be 0).
TrialContrast trial_contrast(const DesignedTrial& trial, const std::vector<std::size_t>& factors,
                             const std::vector<double>& coefficients,
                             const ContrastOptions& options = {});

} // namespace baize::stats
