#pragma once

#include "aft_density.h"
#include "baize/stats/ordinal.h"

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace baize::stats::detail {

/// The rows with weight, categories counted from 0 among those used, covariates
/// with mean 0 and deviation 1. Parameters: thresholds, then coefficients.
struct OrdinalDesign {
  AftDistribution distribution = AftDistribution::log_logistic; ///< of the link
  Eigen::MatrixXd x;
  std::vector<int> level;
  std::vector<double> weight;
  std::vector<std::size_t> row; ///< of the data
  std::vector<int> used;
  std::vector<int> unused;
  double total = 0;
  /// Parameters in the covariates' own units = outside * parameters here.
  Eigen::MatrixXd outside;
  Eigen::Index thresholds() const { return static_cast<Eigen::Index>(used.size()) - 1; }
  Eigen::Index size() const { return thresholds() + x.cols(); }
  /// log P(level) of a row, given the parameters and what is added to its line.
  Between term(const Eigen::VectorXd& at, std::size_t i, double shift) const;
};
std::optional<Summary> make_ordinal(const OrdinalData& data, const OrdinalOptions& options,
                                    OrdinalDesign& design);

/// Thresholds of the shares, with no covariate at work.
Eigen::VectorXd ordinal_start(const OrdinalDesign& design);

struct OrdinalOptimum {
  Eigen::VectorXd at;
  Eigen::MatrixXd covariance;
  double log_likelihood = 0;
  int iterations = 0;
  enum class End { converged, not_converged, separated } end = End::not_converged;
};
OrdinalOptimum maximise_ordinal(const OrdinalDesign& design, int max_iterations);

/// Fills thresholds, coefficients, covariance and their errors.
void report_ordinal(const OrdinalDesign& design, const Eigen::VectorXd& at,
                    const Eigen::MatrixXd& covariance, OrdinalFit& fit);
/// "Converged." with the unused categories named.
Summary ordinal_ended(const OrdinalDesign& design, int iterations);

} // namespace baize::stats::detail
