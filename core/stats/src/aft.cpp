#include "baize/stats/aft.h"

#include "aft_density.h"
#include "aft_fitting.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace baize::stats {
using units::Problem;

std::optional<Problem> AftOptions::problem() const {
  if (max_iterations < 1 || max_iterations > 10000) {
    return Problem{"option_out_of_range", "max_iterations", std::to_string(max_iterations),
                   "from 1 to 10000", "the options"};
  }
  return std::nullopt;
}

AftFit fit_aft(const std::vector<AftObservation>& observations, const AftOptions& options) {
  detail::AftFitting fitting = detail::begin_aft(observations, options);
  if (fitting.fit.summary.usable) {
    detail::compare_with_constant(fitting, options, fitting.fit);
    detail::check_finite(fitting.fit);
  }
  return fitting.fit;
}

std::optional<AftQuantile> aft_quantile(const AftFit& fit, const std::vector<double>& covariates,
                                        double share) {
  if (!fit.summary.usable || !(share > 0 && share < 1) ||
      covariates.size() + 1 != fit.coefficients.size()) {
    return std::nullopt;
  }
  const double far = detail::standard_quantile(fit.distribution, share);
  // The slopes of log time in the coefficients and in log(scale).
  std::vector<double> slopes{1};
  slopes.insert(slopes.end(), covariates.begin(), covariates.end());
  slopes.push_back(fit.scale * far);
  double log_time = fit.scale * far;
  double variance = 0;
  for (std::size_t i = 0; i < fit.covariance.size(); ++i) {
    log_time += i < fit.coefficients.size() ? slopes[i] * fit.coefficients[i].value : 0;
    for (std::size_t k = 0; k < fit.covariance.size(); ++k) {
      variance += slopes[i] * slopes[k] * fit.covariance[i][k];
    }
  }
  const AftQuantile quantile{std::exp(log_time), std::sqrt(std::max(0.0, variance))};
  if (!std::isfinite(quantile.time) || !std::isfinite(quantile.log_standard_error)) {
    return std::nullopt;
  }
  return quantile;
}

} // namespace baize::stats
