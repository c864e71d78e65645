#include "baize/stats/ordinal.h"

#include "baize/stats/distributions.h"
#include "ordinal_design.h"

#include <Eigen/Cholesky>

#include <cmath>
#include <utility>

namespace baize::stats {
namespace detail {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double kTolerance = 1e-12; ///< of the gain a further step promises
/// On the standardised scale; beyond it the optimum lies at infinity.
constexpr double kGreatestVariance = 1e6;

double log_likelihood(const OrdinalDesign& design, const VectorXd& at) {
  double sum = 0;
  for (std::size_t i = 0; i < design.level.size(); ++i) {
    sum += design.weight[i] * design.term(at, i, 0).value;
  }
  return sum;
}

struct Slopes {
  VectorXd gradient;
  MatrixXd information;
};
Slopes slopes(const OrdinalDesign& design, const VectorXd& at) {
  const Eigen::Index size = design.size();
  const Eigen::Index cuts = design.thresholds();
  Slopes out{VectorXd::Zero(size), MatrixXd::Zero(size, size)};
  VectorXd low(size);
  VectorXd high(size);
  for (std::size_t i = 0; i < design.level.size(); ++i) {
    const Between term = design.term(at, i, 0);
    low.setZero();
    low.tail(design.x.cols()) = -design.x.row(static_cast<Eigen::Index>(i)).transpose();
    high = low;
    const Eigen::Index level = design.level[i];
    if (level > 0) {
      low(level - 1) = 1;
    }
    if (level < cuts) {
      high(level) = 1;
    }
    out.gradient += design.weight[i] * (term.da * low + term.db * high);
    out.information -=
        design.weight[i] * (term.daa * low * low.transpose() + term.dbb * high * high.transpose() +
                            term.dab * (low * high.transpose() + high * low.transpose()));
  }
  return out;
}

} // namespace

OrdinalOptimum maximise_ordinal(const OrdinalDesign& design, int max_iterations) {
  OrdinalOptimum out;
  out.at = ordinal_start(design);
  out.log_likelihood = log_likelihood(design, out.at);
  Slopes here = slopes(design, out.at);
  while (out.iterations < max_iterations && out.end == OrdinalOptimum::End::not_converged) {
    ++out.iterations;
    const VectorXd move = here.information.ldlt().solve(here.gradient);
    const double gain = here.gradient.dot(move);
    if (!std::isfinite(gain)) {
      out.end = OrdinalOptimum::End::separated;
      return out;
    }
    double length = 1;
    double next = log_likelihood(design, out.at + move);
    // Thresholds out of order have no likelihood: a number that is no number fails too.
    while (gain > 1e-9 && length > 1e-12 && !(next >= out.log_likelihood + 1e-4 * length * gain)) {
      length /= 2;
      next = log_likelihood(design, out.at + length * move);
    }
    out.at += length * move;
    out.log_likelihood = next;
    here = slopes(design, out.at);
    if (std::fabs(gain) <= kTolerance) {
      out.end = OrdinalOptimum::End::converged;
    }
  }
  const Eigen::LLT<MatrixXd> factor(here.information);
  out.covariance = factor.solve(MatrixXd::Identity(design.size(), design.size()));
  const VectorXd variances = out.covariance.diagonal().tail(design.x.cols());
  if (factor.info() != Eigen::Success || !out.covariance.allFinite() ||
      (variances.size() > 0 && variances.maxCoeff() > kGreatestVariance)) {
    out.end = OrdinalOptimum::End::separated;
  }
  return out;
}

void report_ordinal(const OrdinalDesign& design, const VectorXd& at, const MatrixXd& covariance,
                    OrdinalFit& fit) {
  const VectorXd value = design.outside * at;
  const MatrixXd outside = design.outside * covariance * design.outside.transpose();
  const Eigen::Index cuts = design.thresholds();
  for (Eigen::Index i = 0; i < outside.rows(); ++i) {
    const double error = std::sqrt(outside(i, i));
    if (i < cuts) {
      const auto below = static_cast<std::size_t>(i);
      fit.thresholds.push_back({design.used[below], design.used[below + 1], value(i), error});
    } else {
      fit.coefficients.push_back({value(i), error, 2 * normal_upper(std::fabs(value(i) / error))});
    }
    fit.covariance.emplace_back(outside.row(i).begin(), outside.row(i).end());
  }
  fit.used = design.used;
  fit.unused = design.unused;
  fit.observations = design.total;
}

Summary ordinal_ended(const OrdinalDesign& design, int iterations) {
  Summary out = converged(iterations);
  if (!design.unused.empty()) {
    out.message += " Nobody gave";
    for (std::size_t i = 0; i < design.unused.size(); ++i) {
      out.message += (i == 0 ? " " : ", ") + std::to_string(design.unused[i]);
    }
    out.message += ", so no threshold next to it can be told.";
  }
  return out;
}

} // namespace detail

OrdinalFit fit_ordinal(const OrdinalData& data, const OrdinalOptions& options) {
  OrdinalFit fit;
  fit.link = options.link;
  detail::OrdinalDesign design;
  if (auto bad = detail::make_ordinal(data, options, design)) {
    fit.summary = *bad;
    return fit;
  }
  const auto found = detail::maximise_ordinal(design, options.max_iterations);
  if (found.end == detail::OrdinalOptimum::End::separated) {
    fit.summary = degenerate({"separated", "covariates", "parting higher from lower categories",
                              "such that categories overlap, or left out", ""});
    return fit;
  }
  if (found.end == detail::OrdinalOptimum::End::not_converged) {
    fit.summary = {Termination::not_converged,
                   "The steps did not reach the optimum.",
                   {},
                   found.iterations,
                   false};
    return fit;
  }
  fit.summary = detail::ordinal_ended(design, found.iterations);
  detail::report_ordinal(design, found.at, found.covariance, fit);
  fit.log_likelihood = found.log_likelihood;
  fit.deviance = -2 * found.log_likelihood;
  const Eigen::VectorXd null = detail::ordinal_start(design);
  for (std::size_t i = 0; i < design.level.size(); ++i) {
    fit.log_likelihood_null += design.weight[i] * design.term(null, i, 0).value;
  }
  const auto covariates = static_cast<double>(fit.coefficients.size());
  if (covariates > 0) {
    fit.likelihood_ratio = std::max(0.0, 2 * (fit.log_likelihood - fit.log_likelihood_null));
    fit.likelihood_ratio_p = chi_squared_upper(fit.likelihood_ratio, covariates);
  }
  return fit;
}

std::vector<double> ordinal_probabilities(const OrdinalFit& fit,
                                          const std::vector<double>& covariates) {
  if (!fit.summary.usable || covariates.size() != fit.coefficients.size()) {
    return {};
  }
  double line = 0;
  for (std::size_t j = 0; j < covariates.size(); ++j) {
    line += covariates[j] * fit.coefficients[j].value;
  }
  std::vector<double> out;
  double below = 0;
  for (const OrdinalThreshold& threshold : fit.thresholds) {
    const double z = threshold.value - line;
    const double up_to = fit.link == OrdinalLink::probit ? normal_cdf(z) : 1 / (1 + std::exp(-z));
    out.push_back(up_to - below);
    below = up_to;
  }
  out.push_back(1 - below);
  return out;
}

} // namespace baize::stats
