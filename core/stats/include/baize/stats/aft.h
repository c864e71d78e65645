#pragma once

#include "baize/stats/censored_time.h"
#include "baize/stats/summary.h"

#include <optional>
#include <vector>

namespace baize::stats {

/// log time = b0 + b1 x1 + ... + scale W. W is the smallest extreme value for
/// exponential (scale 1) and Weibull, normal for log-normal, logistic for
/// log-logistic.
enum class AftDistribution { exponential, weibull, log_normal, log_logistic };

struct AftObservation {
  CensoredTime time;
  std::vector<double> covariates; ///< as many for each observation; the constant is not among them
};

struct AftOptions {
  AftDistribution distribution = AftDistribution::weibull;
  int max_iterations = 200; ///< 1 to 10000
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct AftCoefficient {
  double value = 0; ///< exp(value): by what factor times stretch for 1 more of the covariate
  double standard_error = 0;
  double p = 1; ///< two-sided, of value / standard error as normal
};

struct AftFit {
  Summary summary;
  AftDistribution distribution = AftDistribution::weibull;
  std::vector<AftCoefficient> coefficients; ///< the constant first
  double scale = 1;
  double log_scale_error = 0; ///< standard error of log(scale); 0 for exponential
  /// Of the coefficients and, last, of log(scale) where that is estimated.
  std::vector<std::vector<double>> covariance;
  double log_likelihood = 0;      ///< of the times themselves (not of their logarithms)
  double log_likelihood_null = 0; ///< with the constant only
  double likelihood_ratio = 0;    ///< twice the difference, on as many degrees as covariates
  double likelihood_ratio_p = 1;
  int observations = 0;
  int exact = 0;
  int left_censored = 0;
  int right_censored = 0;
  int interval_censored = 0;
};

/// Accelerated failure time regression of exact, left-, right- and
/// interval-censored times by maximum likelihood. Kalbfleisch JD, Prentice RL
/// (2002) The Statistical Analysis of Failure Time Data, 2nd ed., ch. 2 and 3.
/// Newton steps on coefficients / scale and 1 / scale, in which the log-likelihood
/// is concave (Burridge J (1981) J. R. Stat. Soc. B 43:41-45), so that there is
/// one optimum; errors from the second derivatives there.
/// Refuses "too_few" (more observations than coefficients needed),
/// "lengths_differ", "not_finite", "time_out_of_range" (an exact 0 included: its
/// logarithm is not a number), "option_out_of_range". Degenerate "all_censored"
/// (nothing has both ends, or all lies on one side), "singular_design" (a
/// covariate is constant or a sum of others), "not_determined" (separated groups,
/// intervals that one time satisfies, no spread left).
AftFit fit_aft(const std::vector<AftObservation>& observations, const AftOptions& options = {});

struct AftQuantile {
  double time = 0;
  double log_standard_error = 0; ///< of log(time): an interval is time exp(-+ z error)
};
/// When the `share` has ended (0.5: median time) for these covariates. Absent
/// unless the fit is usable, 0 < share < 1 and the covariates fit it.
std::optional<AftQuantile> aft_quantile(const AftFit& fit, const std::vector<double>& covariates,
                                        double share);

} // namespace baize::stats
