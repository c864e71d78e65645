#pragma once

#include "baize/stats/aft.h"

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace baize::stats::detail {

/// The constant and the covariates, brought to mean 0 and spread 1.
struct Design {
  Eigen::MatrixXd columns;
  Eigen::VectorXd mean;
  Eigen::VectorXd unit;
};

/// What fit_aft refuses in the observations.
std::optional<units::Problem> bad_observations(const std::vector<AftObservation>& observations);
/// Fills the counts of a fit.
void count_kinds(const std::vector<AftObservation>& observations, AftFit& fit);
Design standard_design(const std::vector<AftObservation>& observations);
/// The first covariate that is constant or, to ten digits, a sum of those before.
std::optional<units::Problem> singular(const Design& design);

} // namespace baize::stats::detail
