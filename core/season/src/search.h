#pragma once

#include "parameter_scale.h"

#include <functional>

namespace baize::season {

struct Peak {
  Eigen::VectorXd at; ///< scaled
  double height = 0;
  Eigen::MatrixXd root; ///< of the covariance there: at + root z is a draw
  int evaluations = 0;
  bool found = false;
  bool settled = false; ///< the last Newton step promised no gain worth having
};

/// Highest point of a function of scaled parameters, and the normal distribution
/// with its curvature there. Each search step may be watched.
Peak find_peak(Eigen::Index size, const std::function<double(const Eigen::VectorXd&)>& height,
               const std::function<bool()>& go_on);

} // namespace baize::season
