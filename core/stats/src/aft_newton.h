#pragma once

#include "aft_likelihood.h"

#include <Eigen/Core>

namespace baize::stats::detail {

struct Optimum {
  Eigen::VectorXd ratio; ///< coefficients / scale, one for each column of the design
  double rate = 1;       ///< unit / scale
  double log_likelihood = 0;
  Eigen::MatrixXd covariance; ///< of ratio and, unless the rate is fixed, rate
  int iterations = 0;
  enum class End { converged, not_converged, not_determined } end = End::not_converged;
};

/// Maximises the concave log-likelihood by Newton steps. The design's columns are
/// the constant and covariates of mean 0 and spread 1. `near`: an optimum of the same
/// times with more covariates behind these, to start from.
Optimum maximise_aft(const StandardTimes& times, const Eigen::MatrixXd& design,
                     const AftOptions& options, const Optimum* near = nullptr);

} // namespace baize::stats::detail
