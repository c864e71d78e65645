#include "baize/stats/aft.h"

#include "aft_newton.h"
#include "baize/stats/distributions.h"
#include "checks.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace baize::stats {
namespace {

using units::Problem;
using Observations = std::vector<AftObservation>;
using detail::Optimum;

std::optional<Problem> bad_observations(const Observations& observations) {
  const std::size_t covariates = observations.empty() ? 0 : observations.front().covariates.size();
  if (auto problem = too_few("observations", observations.size(), covariates + 3)) {
    return problem;
  }
  std::vector<CensoredTime> times;
  for (std::size_t i = 0; i < observations.size(); ++i) {
    const AftObservation& one = observations[i];
    const std::string place = "observation " + std::to_string(i + 1);
    auto problem = lengths_differ("covariates", one.covariates.size(), covariates);
    problem = problem ? problem : not_finite("covariates", one.covariates);
    if (problem) {
      problem->place = place;
      return problem;
    }
    if (one.time.exact() && one.time.left == 0) {
      return Problem{"time_out_of_range", "time", "0 exactly", "above 0 where it is exact", place};
    }
    times.push_back(one.time);
  }
  return bad_time(times);
}

void count_kinds(const Observations& observations, AftFit& fit) {
  fit.observations = static_cast<int>(observations.size());
  for (const AftObservation& one : observations) {
    if (one.time.exact()) {
      ++fit.exact;
    } else if (one.time.right_censored()) {
      ++fit.right_censored;
    } else if (one.time.left == 0) {
      ++fit.left_censored;
    } else {
      ++fit.interval_censored;
    }
  }
}

/// The constant and the covariates, brought to mean 0 and spread 1.
struct Design {
  Eigen::MatrixXd columns;
  Eigen::VectorXd mean;
  Eigen::VectorXd unit;
};

Design standard_design(const Observations& observations) {
  const auto rows = static_cast<Eigen::Index>(observations.size());
  const auto covariates = static_cast<Eigen::Index>(observations.front().covariates.size());
  Design design{Eigen::MatrixXd::Ones(rows, covariates + 1), Eigen::VectorXd::Zero(covariates + 1),
                Eigen::VectorXd::Ones(covariates + 1)};
  for (Eigen::Index j = 1; j <= covariates; ++j) {
    for (Eigen::Index i = 0; i < rows; ++i) {
      design.columns(i, j) =
          observations[static_cast<std::size_t>(i)].covariates[static_cast<std::size_t>(j - 1)];
    }
    auto column = design.columns.col(j);
    const double largest = column.cwiseAbs().maxCoeff();
    design.mean(j) = column.mean();
    column.array() -= design.mean(j);
    const double spread = std::sqrt(column.squaredNorm() / static_cast<double>(rows));
    design.unit(j) = spread > rounding_of(largest) ? spread : 0;
    column /= spread > 0 ? spread : 1;
  }
  return design;
}

/// The first covariate that is constant or, to ten digits, a sum of those before.
std::optional<Problem> singular(const Design& design) {
  Eigen::MatrixXd q = design.columns;
  for (Eigen::Index j = 0; j < q.cols(); ++j) {
    for (int twice = 0; twice < 2; ++twice) {
      for (Eigen::Index k = 0; k < j; ++k) {
        q.col(j) -= q.col(k).dot(q.col(j)) * q.col(k);
      }
    }
    const double left = q.col(j).squaredNorm() / static_cast<double>(q.rows());
    if (design.unit(j) == 0 || left < 1e-10) {
      return Problem{"singular_design", "covariate", std::to_string(j),
                     "neither the same everywhere nor a sum of the covariates before it", ""};
    }
    q.col(j).normalize();
  }
  return std::nullopt;
}

Summary summary_of(const Optimum& optimum) {
  switch (optimum.end) {
  case Optimum::End::converged:
    return converged(optimum.iterations);
  case Optimum::End::not_determined:
    return degenerate({"not_determined", "times", "such that the fit runs away",
                       "spread within every group, with ends seen on both sides", ""});
  case Optimum::End::not_converged:
    break;
  }
  return {Termination::not_converged,
          "The fit stopped at its limit of iterations.",
          {},
          optimum.iterations,
          false};
}

/// From ratios and rate on the standard scale to coefficients and log scale.
void translate(const detail::StandardTimes& times, const Design& design, const Optimum& optimum,
               AftFit& fit) {
  const Eigen::Index columns = design.columns.cols();
  const double scale = times.unit / optimum.rate;
  Eigen::VectorXd value = scale * optimum.ratio.cwiseQuotient(design.unit);
  value(0) += times.centre - value.tail(columns - 1).dot(design.mean.tail(columns - 1));
  const bool fixed = optimum.covariance.rows() == columns;
  Eigen::MatrixXd j = Eigen::MatrixXd::Zero(optimum.covariance.rows(), optimum.covariance.rows());
  for (Eigen::Index k = 0; k < columns; ++k) {
    j(k, k) = scale / design.unit(k);
    j(0, k) = k == 0 ? scale : -scale * design.mean(k) / design.unit(k);
    if (!fixed) {
      j(k, columns) = -(value(k) - (k == 0 ? times.centre : 0)) / optimum.rate;
    }
  }
  if (!fixed) {
    j(columns, columns) = -1 / optimum.rate;
  }
  const Eigen::MatrixXd covariance = j * optimum.covariance * j.transpose();
  for (Eigen::Index k = 0; k < covariance.rows(); ++k) {
    const Eigen::VectorXd row = covariance.row(k);
    fit.covariance.emplace_back(row.begin(), row.end());
  }
  for (Eigen::Index k = 0; k < columns; ++k) {
    const double error = std::sqrt(covariance(k, k));
    fit.coefficients.push_back({value(k), error, 2 * normal_upper(std::fabs(value(k)) / error)});
  }
  fit.scale = scale;
  fit.log_scale_error = fixed ? 0 : std::sqrt(covariance(columns, columns));
}

void compare(const detail::StandardTimes& times, const Design& design, const AftOptions& options,
             AftFit& fit) {
  const auto covariates = static_cast<double>(design.columns.cols() - 1);
  fit.log_likelihood_null = fit.log_likelihood;
  if (covariates == 0) {
    return;
  }
  const Optimum null = detail::maximise_aft(times, design.columns.leftCols(1), options);
  if (null.end != Optimum::End::converged) {
    fit.summary = summary_of(null);
    return;
  }
  fit.log_likelihood_null = null.log_likelihood;
  fit.likelihood_ratio = std::max(0.0, 2 * (fit.log_likelihood - null.log_likelihood));
  fit.likelihood_ratio_p = chi_squared_upper(fit.likelihood_ratio, covariates);
}

} // namespace

std::optional<Problem> AftOptions::problem() const {
  if (max_iterations < 1 || max_iterations > 10000) {
    return Problem{"option_out_of_range", "max_iterations", std::to_string(max_iterations),
                   "from 1 to 10000", "the options"};
  }
  return std::nullopt;
}

AftFit fit_aft(const Observations& observations, const AftOptions& options) {
  AftFit fit;
  fit.distribution = options.distribution;
  count_kinds(observations, fit);
  auto problem = options.problem();
  problem = problem ? problem : bad_observations(observations);
  if (problem) {
    fit.summary = refused(*problem);
    return fit;
  }
  if (fit.right_censored == fit.observations || fit.left_censored == fit.observations) {
    fit.summary = degenerate({"all_censored", "times",
                              std::to_string(fit.observations) + " all open on one side",
                              "such that some have a beginning and some an end", ""});
    return fit;
  }
  const Design design = standard_design(observations);
  if (auto found = singular(design)) {
    fit.summary = degenerate(*found);
    return fit;
  }
  const detail::StandardTimes times = detail::standard_times(observations);
  const Optimum optimum = detail::maximise_aft(times, design.columns, options);
  fit.summary = summary_of(optimum);
  fit.log_likelihood = optimum.log_likelihood;
  if (!fit.summary.usable) {
    return fit;
  }
  translate(times, design, optimum, fit);
  compare(times, design, options, fit);
  if (fit.summary.usable) {
    const Summary checked = done_if_finite({fit.log_likelihood, fit.coefficients[0].value,
                                            fit.coefficients.back().standard_error, fit.scale});
    fit.summary = checked.usable ? fit.summary : checked;
  }
  return fit;
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
