#pragma once

#include "baize/stats/summary.h"

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace baize::stats {

/// One step of a linear Gaussian state space model with m states:
///   state_t = transition state_(t-1) + input + eta,  eta ~ N(0, state_noise)
///   value_t = loading' state_t + epsilon,            epsilon ~ N(0, noise)
/// Several values of one moment are several steps without transition. The first
/// step's transition, input and state noise are not used: the start stands there.
struct StateStep {
  Eigen::MatrixXd transition;  ///< m by m; empty: the identity
  Eigen::VectorXd input;       ///< m known changes; empty: none
  Eigen::MatrixXd state_noise; ///< m by m covariance; empty: none
  Eigen::VectorXd loading;     ///< m
  double noise = 0;            ///< variance of the value, 0 or more
  std::optional<double> value; ///< empty: not measured
};

/// The model. A state marked diffuse starts with an infinite variance, treated
/// exactly (no large number stands for it); its row and column of the start's
/// covariance must be 0.
struct StateSpace {
  Eigen::VectorXd start_mean;       ///< m
  Eigen::MatrixXd start_covariance; ///< m by m; empty: all 0
  std::vector<bool> diffuse;        ///< m; empty: none
  std::vector<StateStep> steps;
  /// "no_steps", "sizes_disagree", "not_finite", "negative_variance".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct StateEstimate {
  Eigen::VectorXd mean;
  Eigen::MatrixXd covariance; ///< its finite part, where not all is determined
  bool determined = true;     ///< false while some diffuse start is not yet known
};

/// One-step prediction error of a value and its variance. While a diffuse start
/// is being learnt the variance is infinite and `variance` holds its factor.
struct Innovation {
  double error = 0;
  double variance = 0;
  bool diffuse = false;
};

struct KalmanFilter {
  Summary summary;
  /// Diffuse log-likelihood: -1/2 sum(log 2 pi + log F + v^2/F) over ordinary
  /// values and -1/2 log F_inf over those that learn the diffuse start (without
  /// log 2 pi, as their density is not proper).
  double log_likelihood = 0;
  int values = 0;                                     ///< how many were measured
  int diffuse_values = 0;                             ///< how many of them learnt the start
  std::vector<StateEstimate> states;                  ///< after each step's value
  std::vector<std::optional<Innovation>> innovations; ///< one a step; empty: not measured
};

/// Exact diffuse Kalman filter, one value at a time. Durbin J, Koopman SJ (2012)
/// Time Series Analysis by State Space Methods, 2nd ed., ch. 4, 5.2 and 6.4.
/// Refuses as StateSpace::problem; degenerate "start_not_determined" where the
/// values cannot tell a diffuse start, "value_contradicts" where the model is
/// certain of a value and it is another.
/// `keep_states` false leaves states and innovations empty (for likelihoods).
KalmanFilter kalman_filter(const StateSpace& model, bool keep_states = true);

struct KalmanSmoother {
  Summary summary;
  double log_likelihood = 0;         ///< as the filter's
  std::vector<StateEstimate> states; ///< each step's state given all values
};

/// Exact diffuse fixed-interval smoother (same book, 5.3 and 6.4.4). The covariance
/// holds the uncertainty of the state, given the model's variances as known.
/// Refuses as kalman_filter. Steps without value at the end are forecasts.
KalmanSmoother kalman_smooth(const StateSpace& model);

} // namespace baize::stats
