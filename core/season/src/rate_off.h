#pragma once

#include "baize/season/fit.h"
#include "baize/stats/random.h"

namespace baize::season {

/// How far the rates of a green's losses lie from their methods', as logs, and what
/// that does to its other effects.
struct RateOff {
  Eigen::VectorXd mean;
  Eigen::MatrixXd root;     ///< of the covariance: mean + root z is a draw
  Eigen::MatrixXd response; ///< change of the own effects with each log rate
};

/// At the fit's parameters and effects, by linear regression with one more column a
/// loss. Empty where a matrix was singular.
std::vector<RateOff> rates_off(const SeasonFit& fit);

} // namespace baize::season
