#include "aft_fitting.h"

#include "baize/stats/distributions.h"
#include "checks.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace baize::stats::detail {

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

void translate(const AftFitting& from, const Optimum& optimum, AftFit& fit) {
  const Design& design = from.design;
  const StandardTimes& times = from.times;
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
  fit.covariance.clear();
  fit.coefficients.clear();
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

void compare_with_constant(const AftFitting& from, const AftOptions& options, AftFit& fit) {
  const auto covariates = static_cast<double>(from.design.columns.cols() - 1);
  fit.log_likelihood_null = fit.log_likelihood;
  if (covariates == 0) {
    return;
  }
  const Optimum null =
      maximise_aft(from.distinct.times, from.distinct.design.leftCols(1), options, &from.optimum);
  if (null.end != Optimum::End::converged) {
    fit.summary = summary_of(null);
    return;
  }
  fit.log_likelihood_null = null.log_likelihood;
  fit.likelihood_ratio = std::max(0.0, 2 * (fit.log_likelihood - null.log_likelihood));
  fit.likelihood_ratio_p = chi_squared_upper(fit.likelihood_ratio, covariates);
}

void check_finite(AftFit& fit) {
  if (!fit.summary.usable) {
    return;
  }
  const Summary checked = done_if_finite({fit.log_likelihood, fit.coefficients[0].value,
                                          fit.coefficients.back().standard_error, fit.scale});
  fit.summary = checked.usable ? fit.summary : checked;
}

AftFitting begin_aft(const std::vector<AftObservation>& observations, const AftOptions& options) {
  AftFitting out;
  AftFit& fit = out.fit;
  fit.distribution = options.distribution;
  count_kinds(observations, fit);
  auto problem = options.problem();
  problem = problem ? problem : bad_observations(observations);
  if (problem) {
    fit.summary = refused(*problem);
    return out;
  }
  if (fit.right_censored == fit.observations || fit.left_censored == fit.observations) {
    fit.summary = degenerate({"all_censored", "times",
                              std::to_string(fit.observations) + " all open on one side",
                              "such that some have a beginning and some an end", ""});
    return out;
  }
  out.design = standard_design(observations);
  if (auto found = singular(out.design)) {
    fit.summary = degenerate(*found);
    return out;
  }
  out.times = standard_times(observations);
  out.distinct = distinct_rows(out.times, out.design.columns);
  out.optimum = maximise_aft(out.distinct.times, out.distinct.design, options);
  fit.summary = summary_of(out.optimum);
  fit.log_likelihood = out.optimum.log_likelihood;
  if (fit.summary.usable) {
    translate(out, out.optimum, fit);
  }
  return out;
}

} // namespace baize::stats::detail
