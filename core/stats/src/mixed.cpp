#include "baize/stats/mixed.h"

#include "baize/stats/distributions.h"
#include "baize/stats/mixed_contrast.h"
#include "mixed_search.h"

#include <Eigen/Cholesky>
#include <Eigen/Eigenvalues>

#include <cmath>
#include <numbers>
#include <utility>

namespace baize::stats {
namespace {

using detail::MixedCriterion;
using detail::MixedDesign;
using detail::MixedOptimum;
using Eigen::MatrixXd;
using Eigen::VectorXd;

std::vector<std::vector<double>> rows_of(const MatrixXd& m) {
  std::vector<std::vector<double>> out;
  for (Eigen::Index i = 0; i < m.rows(); ++i) {
    out.emplace_back(static_cast<std::size_t>(m.cols()));
    for (Eigen::Index j = 0; j < m.cols(); ++j) {
      out.back()[static_cast<std::size_t>(j)] = m(i, j);
    }
  }
  return out;
}

/// 2 H^-1 for the criterion's second derivatives H by theta and the residual
/// deviation `sd`; directions that do not bend carry no information and are left out.
MatrixXd parameter_covariance(const detail::Derivatives& slopes, double sd, double count) {
  const auto size = static_cast<Eigen::Index>(slopes.first.size());
  MatrixXd hessian(size + 1, size + 1);
  for (Eigen::Index i = 0; i < size; ++i) {
    for (Eigen::Index j = 0; j < size; ++j) {
      const VectorXd& second = slopes.second[i][j];
      hessian(i, j) = second(0) + second(1) / (sd * sd);
    }
    hessian(i, size) = hessian(size, i) = -2 * slopes.first[i](1) / (sd * sd * sd);
  }
  hessian(size, size) = 4 * count / (sd * sd);
  const Eigen::SelfAdjointEigenSolver<MatrixXd> eigen(hessian);
  const VectorXd& values = eigen.eigenvalues();
  const double flat = 1e-8 * std::max(1.0, values.maxCoeff() * 1e-3);
  const VectorXd inverse =
      (values.array() > flat).select(2 / values.array(), VectorXd::Zero(size + 1).array());
  return eigen.eigenvectors() * inverse.asDiagonal() * eigen.eigenvectors().transpose();
}

void fill_fixed(const MixedCriterion& criterion, const MixedOptimum& found, double sd,
                MixedFit& fit) {
  const MixedDesign& design = criterion.design();
  const Eigen::Index fixed = design.q.cols();
  const double variance = sd * sd * design.unit * design.unit;
  const auto outside = [&](const MatrixXd& m) {
    return rows_of(design.back * m * design.back.transpose());
  };
  const MatrixXd inverse = found.value.information.llt().solve(MatrixXd::Identity(fixed, fixed));
  fit.covariance = outside(variance * inverse);
  for (const VectorXd& slope : found.slopes.first) {
    MatrixXd change(fixed, fixed);
    Eigen::Index next = 2;
    for (Eigen::Index j = 0; j < fixed; ++j) {
      for (Eigen::Index i = j; i < fixed; ++i) {
        change(i, j) = change(j, i) = slope(next++);
      }
    }
    fit.covariance_slopes.push_back(outside(variance * change));
  }
  fit.covariance_slopes.push_back(outside(2 / sd * variance * inverse));
  fit.parameter_covariance = rows_of(parameter_covariance(found.slopes, sd, criterion.count()));
  const VectorXd values = design.back * (design.from_fixed + design.unit * found.value.best);
  for (const double value : values) {
    fit.coefficients.push_back({value, 0, 0, 0, 1, {}});
  }
}

RandomTermFit of_term(const detail::Grouping& term, const VectorXd& theta, Eigen::Index at,
                      double sd) {
  const int k = term.columns;
  MatrixXd factor = MatrixXd::Zero(k, k);
  for (int j = 0; j < k; ++j) {
    for (int i = j; i < (term.correlated ? k : j + 1); ++i) {
      factor(i, j) = theta(at++);
    }
  }
  RandomTermFit out;
  for (int i = 0; i < k; ++i) {
    out.sd.push_back(factor.row(i).norm() * sd / term.scale[i]);
    out.correlation.emplace_back(static_cast<std::size_t>(k), 0.0);
    for (int j = 0; j < k; ++j) {
      const double lengths = factor.row(i).norm() * factor.row(j).norm();
      out.correlation[i][j] = lengths > 0 ? factor.row(i).dot(factor.row(j)) / lengths : 0;
    }
    out.correlation[i][i] = 1;
  }
  return out;
}

void fill_random(const MixedModel& model, MixedCriterion& criterion, const MixedOptimum& found,
                 bool groups, double sd, MixedFit& fit) {
  const MixedDesign& design = criterion.design();
  const auto effects = groups ? criterion.effects(found.value) : MixedCriterion::Effects{};
  fit.random.resize(design.terms.size());
  Eigen::Index at = 0;
  for (std::size_t t = 0; t < design.terms.size(); ++t) {
    const detail::Grouping& term = design.terms[t];
    const auto place = static_cast<std::size_t>(design.place[t]);
    RandomTermFit& out = fit.random[place];
    out = of_term(term, found.theta, at, sd * design.unit);
    out.name = model.random[place].name;
    at += term.thetas();
    const auto k = static_cast<std::size_t>(term.columns);
    for (std::size_t g = 0; groups && g < static_cast<std::size_t>(term.groups); ++g) {
      GroupEffect effect{term.label[g], std::vector<double>(k), std::vector<double>(k)};
      for (std::size_t i = 0; i < k; ++i) {
        const double unit = design.unit / term.scale[i];
        effect.value[i] = effects.value[t][g * k + i] * unit;
        effect.sd[i] = sd * unit * std::sqrt(effects.covariance[t][(g * k + i) * k + i]);
      }
      out.groups.push_back(std::move(effect));
    }
  }
}

Summary ended(const MixedOptimum& found) {
  switch (found.end) {
  case MixedOptimum::End::no_residual:
    return degenerate({"no_residual", "y", "explained wholly by the groups",
                       "values that differ within groups", ""});
  case MixedOptimum::End::not_converged:
    return {Termination::not_converged,
            "The search for the variances did not reach an optimum.",
            {},
            found.iterations,
            false};
  case MixedOptimum::End::converged:
    break;
  }
  Summary out = converged(found.iterations);
  if (found.boundary) {
    out.termination = Termination::boundary;
    out.message = "Converged with a variance at 0, or a correlation at -1 or 1.";
  }
  return out;
}

bool finite(const MixedFit& fit) {
  bool all = std::isfinite(fit.log_likelihood) && std::isfinite(fit.residual_sd);
  for (const MixedCoefficient& one : fit.coefficients) {
    all = all && std::isfinite(one.value) && std::isfinite(one.standard_error) &&
          std::isfinite(one.df) && std::isfinite(one.p);
  }
  return all;
}

void test_coefficients(double confidence, MixedFit& fit) {
  for (std::size_t i = 0; i < fit.coefficients.size(); ++i) {
    std::vector<double> weights(fit.coefficients.size(), 0);
    weights[i] = 1;
    fit.coefficients[i] = mixed_contrast(fit, weights, {confidence}).estimate;
  }
}

} // namespace

MixedFit fit_mixed(const MixedModel& model, const MixedOptions& options) {
  MixedFit fit;
  fit.restricted = options.restricted;
  fit.observations = static_cast<int>(model.y.size());
  MixedDesign design;
  const auto problem = options.problem();
  auto bad = problem ? std::optional(refused(*problem)) : detail::check_mixed(model);
  bad = bad ? bad : detail::make_design(model, design);
  if (bad) {
    fit.summary = *bad;
    return fit;
  }
  MixedCriterion criterion(design, options.restricted);
  const MixedOptimum found = detail::search_theta(criterion, options.max_iterations);
  fit.summary = ended(found);
  if (!fit.summary.usable) {
    return fit;
  }
  const double count = criterion.count();
  const double sd = std::sqrt(found.value.ss / count);
  fit.residual_sd = sd * design.unit;
  fit.parameters = static_cast<int>(design.q.cols()) + design.thetas() + 1;
  fit.criterion =
      criterion.log_dets(found.value) +
      count * (1 + std::log(2 * std::numbers::pi * sd * sd) + 2 * std::log(design.unit)) -
      (options.restricted ? 2 * design.log_det_back : 0);
  fit.log_likelihood = -fit.criterion / 2;
  fill_fixed(criterion, found, sd, fit);
  fill_random(model, criterion, found, options.group_effects, sd, fit);
  test_coefficients(options.confidence, fit);
  if (!finite(fit)) {
    fit.summary = {
        Termination::not_converged, "The result is not finite.", {}, found.iterations, false};
  }
  return fit;
}

} // namespace baize::stats
