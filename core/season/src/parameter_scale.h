#pragma once

#include "baize/season/evaluate.h"

namespace baize::season {

/// Parameters as a vector of logs, each less its belief's mean and divided by its
/// sd: level_walk, visit_sd, line_sd, depth_spread, then the methods' rates.
class ParameterScale {
 public:
  ParameterScale(const Model& model, const Priors& priors);

  Eigen::Index size() const { return mean_.size(); }
  Parameters parameters(const Eigen::VectorXd& scaled,
                        const std::vector<double>& typical_depth) const;
  /// Log density of the beliefs, less its constant.
  double log_prior(const Eigen::VectorXd& scaled) const;
  double sd(Eigen::Index at) const { return sd_(at); }

 private:
  Eigen::VectorXd mean_;
  Eigen::VectorXd sd_;
  Eigen::MatrixXd precision_; ///< of the scaled vector: methods' rates go together
};

} // namespace baize::season
