#include "baize/stats/mixed_contrast.h"

#include "baize/stats/distributions.h"
#include "checks.h"

#include <Eigen/Core>
#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>

namespace baize::stats {
namespace {

using units::Problem;
using Matrix = std::vector<std::vector<double>>;

double quadratic(const Matrix& m, const std::vector<double>& w) {
  double sum = 0;
  for (std::size_t i = 0; i < w.size(); ++i) {
    for (std::size_t j = 0; j < w.size(); ++j) {
      sum += w[i] * m[i][j] * w[j];
    }
  }
  return sum;
}

double degrees(const MixedFit& fit, const std::vector<double>& weights, double variance) {
  std::vector<double> change;
  change.reserve(fit.covariance_slopes.size());
  for (const Matrix& slope : fit.covariance_slopes) {
    change.push_back(quadratic(slope, weights));
  }
  return 2 * variance * variance / quadratic(fit.parameter_covariance, change);
}

std::optional<Problem> bad(const MixedFit& fit, const std::vector<double>& weights) {
  if (!fit.summary.usable) {
    return Problem{"fit_not_usable", "fit", fit.summary.message, "a fit that may be used", ""};
  }
  auto problem = lengths_differ("weights", weights.size(), fit.coefficients.size());
  return problem ? problem : not_finite("weights", weights);
}

} // namespace

MixedContrast mixed_contrast(const MixedFit& fit, const std::vector<double>& weights,
                             const ConfidenceOptions& options) {
  MixedContrast out;
  auto problem = options.problem();
  problem = problem ? problem : bad(fit, weights);
  if (problem) {
    out.summary = refused(*problem);
    return out;
  }
  if (std::all_of(weights.begin(), weights.end(), [](double w) { return w == 0; })) {
    out.summary = degenerate({"all_zero", "weights", "all 0", "such that one is not 0", ""});
    return out;
  }
  MixedCoefficient& estimate = out.estimate;
  for (std::size_t i = 0; i < weights.size(); ++i) {
    estimate.value += weights[i] * fit.coefficients[i].value;
  }
  const double variance = quadratic(fit.covariance, weights);
  estimate.standard_error = std::sqrt(variance);
  estimate.df = degrees(fit, weights, variance);
  estimate.t = estimate.value / estimate.standard_error;
  estimate.p = 2 * t_upper(std::fabs(estimate.t), estimate.df);
  const double reach =
      t_quantile(0.5 + options.confidence / 2, estimate.df) * estimate.standard_error;
  estimate.interval = {estimate.value - reach, estimate.value + reach};
  out.summary = done_if_finite({estimate.value, estimate.standard_error, estimate.df, estimate.p});
  return out;
}

MixedFTest mixed_f_test(const MixedFit& fit, const Matrix& contrasts) {
  MixedFTest out;
  auto problem = too_few("contrasts", contrasts.size(), 1);
  for (std::size_t i = 0; !problem && i < contrasts.size(); ++i) {
    problem = bad(fit, contrasts[i]);
  }
  if (problem) {
    out.summary = refused(*problem);
    return out;
  }
  const auto rows = static_cast<Eigen::Index>(contrasts.size());
  const auto columns = static_cast<Eigen::Index>(fit.coefficients.size());
  Eigen::MatrixXd l(rows, columns);
  Eigen::MatrixXd v(columns, columns);
  Eigen::VectorXd b(columns);
  for (Eigen::Index j = 0; j < columns; ++j) {
    b(j) = fit.coefficients[j].value;
    for (Eigen::Index i = 0; i < rows; ++i) {
      l(i, j) = contrasts[i][j];
    }
    for (Eigen::Index i = 0; i < columns; ++i) {
      v(i, j) = fit.covariance[i][j];
    }
  }
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> eigen(l * v * l.transpose());
  const double least = 1e-10 * eigen.eigenvalues().maxCoeff();
  double sum = 0;
  double mean = 0; // of the squares' sum, as F of each row's degrees of freedom has it
  for (Eigen::Index i = 0; i < rows; ++i) {
    const double variance = eigen.eigenvalues()(i);
    if (!(variance > least)) {
      continue;
    }
    const Eigen::VectorXd row = l.transpose() * eigen.eigenvectors().col(i);
    const double df = degrees(fit, {row.begin(), row.end()}, variance);
    const double value = row.dot(b);
    sum += value * value / variance;
    mean += df > 2 ? df / (df - 2) : 0;
    ++out.df;
    out.error_df = df;
  }
  if (out.df == 0) {
    out.summary = degenerate({"all_zero", "contrasts", "all 0", "such that one is not 0", ""});
    return out;
  }
  out.f = sum / out.df;
  if (out.df > 1) {
    out.error_df = mean > out.df ? 2 * mean / (mean - out.df) : 2;
  }
  out.p = f_upper(out.f, out.df, out.error_df);
  out.summary = done_if_finite({out.f, out.error_df, out.p});
  return out;
}

LikelihoodRatio likelihood_ratio(const MixedFit& smaller, const MixedFit& larger) {
  LikelihoodRatio out;
  for (const MixedFit* fit : {&smaller, &larger}) {
    if (!fit->summary.usable) {
      out.summary =
          refused({"fit_not_usable", "fit", fit->summary.message, "a fit that may be used", ""});
      return out;
    }
  }
  const auto differ = [](const std::string& found, const std::string& rule) {
    return refused({"fits_differ", "fits", found, rule, ""});
  };
  out.statistic = smaller.criterion - larger.criterion;
  out.df = larger.parameters - smaller.parameters;
  const double slack = 1e-6 * std::max(1.0, std::fabs(larger.criterion) * 1e-3);
  if (smaller.observations != larger.observations) {
    out.summary = differ(std::to_string(smaller.observations) + " and " +
                             std::to_string(larger.observations) + " rows",
                         "of the same rows");
  } else if (smaller.restricted || larger.restricted) {
    out.summary = differ("restricted", "by full maximum likelihood");
  } else if (out.df < 1) {
    out.summary = differ(std::to_string(-out.df) + " parameters fewer in the larger",
                         "such that the larger has more parameters");
  } else if (out.statistic < -slack) {
    out.summary = differ("a smaller model that fits better", "one within the other");
  } else {
    out.statistic = std::max(0.0, out.statistic);
    out.p = chi_squared_upper(out.statistic, out.df);
    out.summary = done_if_finite({out.statistic, out.p});
  }
  return out;
}

} // namespace baize::stats
