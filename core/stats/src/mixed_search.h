#pragma once

#include "differences.h"
#include "mixed_criterion.h"

#include <Eigen/Core>

namespace baize::stats::detail {

/// How far from 0 each theta bends the likelihood: 1 / sqrt(rows of the largest
/// group), since a group of m rows enters as log(1 + m theta^2).
Eigen::VectorXd bends(const MixedDesign& design);
/// Diagonal entries of the factors within theta.
std::vector<Eigen::Index> diagonal(const MixedDesign& design);
/// A start for the search: the best of a few thetas in like proportion.
Eigen::VectorXd start_theta(const MixedDesign& design, const Objective& objective);

struct MixedOptimum {
  Eigen::VectorXd theta; ///< the factors' diagonals 0 or more
  MixedValue value;      ///< at theta
  /// By theta: functions are log dets, ss and the inverse information, its lower
  /// triangle column after column.
  Derivatives slopes;
  int iterations = 0;
  bool boundary = false; ///< a diagonal entry is 0
  enum class End { converged, not_converged, no_residual } end = End::not_converged;
};
/// The likelihood does not know the signs of a factor's columns, so the search
/// needs no bounds.
MixedOptimum search_theta(MixedCriterion& criterion, int max_iterations);

} // namespace baize::stats::detail
