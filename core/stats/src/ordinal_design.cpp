#include "ordinal_design.h"

#include "checks.h"

#include <Eigen/QR>

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

namespace baize::stats {

using units::Problem;

std::optional<Problem> OrdinalOptions::problem() const {
  if (max_iterations < 1 || max_iterations > 10000) {
    return Problem{"option_out_of_range", "max_iterations", std::to_string(max_iterations),
                   "from 1 to 10000", "the options"};
  }
  return std::nullopt;
}

namespace detail {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
/// A standardised covariate shorter than this once the others are taken out is their sum.
constexpr double kDependent = 1e-10;

std::optional<Problem> check(const OrdinalData& data) {
  const std::size_t rows = data.category.size();
  auto problem = too_few("rows", rows, data.covariates.size() + 2);
  for (std::size_t j = 0; !problem && j < data.covariates.size(); ++j) {
    const std::string name = "covariate " + std::to_string(j + 1);
    problem = lengths_differ(name.c_str(), data.covariates[j].size(), rows);
    problem = problem ? problem : not_finite(name.c_str(), data.covariates[j]);
  }
  if (!problem && !data.weight.empty()) {
    problem = lengths_differ("weight", data.weight.size(), rows);
    problem = problem ? problem : not_finite("weight", data.weight);
  }
  for (std::size_t i = 0; !problem && i < data.weight.size(); ++i) {
    if (data.weight[i] < 0) {
      problem = Problem{"below_zero", "weight", units::write_number(data.weight[i]), "0 or more",
                        "row " + std::to_string(i + 1)};
    }
  }
  for (std::size_t i = 0; !problem && !data.scale.empty() && i < rows; ++i) {
    if (std::find(data.scale.begin(), data.scale.end(), data.category[i]) == data.scale.end()) {
      problem = Problem{"not_in_scale", "category", std::to_string(data.category[i]),
                        "one of the scale's", "row " + std::to_string(i + 1)};
    }
  }
  return problem;
}

void keep_rows(const OrdinalData& data, OrdinalDesign& design) {
  std::set<int> used;
  for (std::size_t i = 0; i < data.category.size(); ++i) {
    const double weight = data.weight.empty() ? 1 : data.weight[i];
    if (weight > 0) {
      design.row.push_back(i);
      design.weight.push_back(weight);
      design.total += weight;
      used.insert(data.category[i]);
    }
  }
  design.used.assign(used.begin(), used.end());
  for (const std::size_t i : design.row) {
    const auto at = std::lower_bound(design.used.begin(), design.used.end(), data.category[i]);
    design.level.push_back(static_cast<int>(at - design.used.begin()));
  }
  const std::set<int> scale(data.scale.begin(), data.scale.end());
  for (const int category : scale) {
    if (!used.contains(category)) {
      design.unused.push_back(category);
    }
  }
}

std::optional<Summary> standardise(const OrdinalData& data, OrdinalDesign& design) {
  const auto rows = static_cast<Eigen::Index>(design.row.size());
  const auto columns = static_cast<Eigen::Index>(data.covariates.size());
  const Eigen::Map<const Eigen::VectorXd> weight(design.weight.data(), rows);
  const Eigen::Index cuts = design.thresholds();
  design.x.resize(rows, columns);
  design.outside = Eigen::MatrixXd::Identity(cuts + columns, cuts + columns);
  for (Eigen::Index j = 0; j < columns; ++j) {
    for (Eigen::Index i = 0; i < rows; ++i) {
      design.x(i, j) =
          data.covariates[static_cast<std::size_t>(j)][design.row[static_cast<std::size_t>(i)]];
    }
    const double largest = design.x.col(j).cwiseAbs().maxCoeff();
    const double mean = weight.dot(design.x.col(j)) / design.total;
    design.x.col(j).array() -= mean;
    const double sd = std::sqrt(weight.dot(design.x.col(j).cwiseAbs2()) / design.total);
    if (!std::isfinite(sd) || sd <= rounding_of(largest)) {
      return degenerate({"singular_design", "covariate " + std::to_string(j + 1), "constant",
                         "a column that varies", ""});
    }
    design.x.col(j) /= sd;
    design.outside(cuts + j, cuts + j) = 1 / sd;
    design.outside.col(cuts + j).head(cuts).setConstant(mean / sd);
  }
  if (columns > 0) {
    const Eigen::MatrixXd scaled = (weight / design.total).cwiseSqrt().asDiagonal() * design.x;
    const Eigen::HouseholderQR<Eigen::MatrixXd> qr(scaled);
    for (Eigen::Index j = 0; j < columns; ++j) {
      if (j >= rows || !(std::fabs(qr.matrixQR()(j, j)) > kDependent)) {
        return degenerate({"singular_design", "covariate " + std::to_string(j + 1),
                           "a sum of those before it", "a column that adds something", ""});
      }
    }
  }
  return std::nullopt;
}

} // namespace

Between OrdinalDesign::term(const Eigen::VectorXd& at, std::size_t i, double shift) const {
  const Eigen::Index mine = level[i];
  const double line =
      x.row(static_cast<Eigen::Index>(i)).dot(at.segment(thresholds(), x.cols())) + shift;
  const double low = mine == 0 ? -kInfinity : at(mine - 1) - line;
  const double high = mine == thresholds() ? kInfinity : at(mine) - line;
  return between_term(distribution, low, high);
}

std::optional<Summary> make_ordinal(const OrdinalData& data, const OrdinalOptions& options,
                                    OrdinalDesign& design) {
  auto problem = options.problem();
  problem = problem ? problem : check(data);
  if (problem) {
    return refused(*problem);
  }
  design.distribution = options.link == OrdinalLink::logit ? AftDistribution::log_logistic
                                                           : AftDistribution::log_normal;
  keep_rows(data, design);
  if (design.used.size() < 2) {
    return degenerate({"one_category", "category", "the same in every row that has weight",
                       "at least two that differ", ""});
  }
  return standardise(data, design);
}

Eigen::VectorXd ordinal_start(const OrdinalDesign& design) {
  Eigen::VectorXd at = Eigen::VectorXd::Zero(design.size());
  std::vector<double> share(design.used.size(), 0);
  for (std::size_t i = 0; i < design.level.size(); ++i) {
    share[static_cast<std::size_t>(design.level[i])] += design.weight[i] / design.total;
  }
  double sum = 0;
  for (Eigen::Index j = 0; j < design.thresholds(); ++j) {
    sum += share[static_cast<std::size_t>(j)];
    at(j) = standard_quantile(design.distribution, sum);
  }
  return at;
}

} // namespace detail
} // namespace baize::stats
