#pragma once

#include "baize/stats/state_space.h"

#include <vector>

namespace baize::stats::detail {

enum class Update { none, ordinary, diffuse };

/// What one step's prediction and update left behind, as the smoother needs it.
struct Step {
  Eigen::VectorXd mean;       ///< predicted
  Eigen::MatrixXd covariance; ///< predicted, finite part
  Eigen::MatrixXd infinite;   ///< predicted, factor of the infinite part; empty when 0
  Update update = Update::none;
  double error = 0;
  double variance = 0;     ///< F*
  double infinite_var = 0; ///< F_inf
  Eigen::VectorXd gain;    ///< K, or K0 of a diffuse update
  Eigen::VectorXd gain1;   ///< K1 of a diffuse update
};

/// The filter's walk through the steps; `steps` is filled only when asked for.
struct Pass {
  KalmanFilter filter;
  std::vector<Step> steps;
};
Pass pass(const StateSpace& model, bool keep_states, bool keep_steps);

} // namespace baize::stats::detail
