#pragma once

#include "aft_density.h"

#include <Eigen/Core>

#include <vector>

namespace baize::stats::detail {

/// Times on a standard scale: w = rate y - x . ratio, where y = (log t - centre) /
/// unit has mean about 0 and spread about 1. A row is exact when low == high; low
/// is -infinity for left-, high is infinity for right-censored times.
struct StandardTimes {
  std::vector<double> low;
  std::vector<double> high;
  double centre = 0;
  double unit = 1;
  double jacobian = 0; ///< added to the log-likelihood: sum of -log t over exact times
};
StandardTimes standard_times(const std::vector<AftObservation>& observations);

struct Optimum {
  Eigen::VectorXd ratio; ///< coefficients / scale, one for each column of the design
  double rate = 1;       ///< unit / scale
  double log_likelihood = 0;
  Eigen::MatrixXd covariance; ///< of ratio and, unless the rate is fixed, rate
  int iterations = 0;
  enum class End { converged, not_converged, not_determined } end = End::not_converged;
};

/// Maximises the concave log-likelihood by Newton steps. The design's columns are
/// the constant and covariates of mean 0 and spread 1.
Optimum maximise_aft(const StandardTimes& times, const Eigen::MatrixXd& design,
                     const AftOptions& options);

} // namespace baize::stats::detail
