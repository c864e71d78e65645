#pragma once

#include "baize/stats/ordinal.h"

#include <vector>

namespace baize::stats {

struct OrdinalObserversOptions {
  OrdinalLink link = OrdinalLink::logit;
  int nodes = 15;           ///< of the quadrature, 1 (Laplace's approximation) to 99
  int max_iterations = 200; ///< 1 to 10000
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// How far an observer's thresholds lie below the mean observer's: above 0, he gives
/// higher categories for the same.
struct ObserverShift {
  int observer = 0;
  double value = 0; ///< mean given the data and the estimates
  double sd = 0;
};

struct OrdinalObservers {
  Summary summary; ///< boundary: observers do not differ
  OrdinalFit fit;  ///< its covariance is of thresholds, coefficients and, last, observer_sd
  double observer_sd = 0;
  double observer_sd_error = 0; ///< 0 at the boundary
  /// Against the same model without observers; its p halves chi-squared's on one
  /// degree, since a deviation of 0 is at the edge (Self SG, Liang KY (1987) J. Am.
  /// Stat. Assoc. 82:605-610).
  double likelihood_ratio = 0;
  double likelihood_ratio_p = 1;
  std::vector<ObserverShift> observers; ///< by number
};

/// Ordinal regression in which each observer moves all thresholds together:
/// P(category <= j) = F(threshold_j - covariates . coefficients - shift), shift
/// normal with mean 0. Maximum likelihood with the shifts integrated out by adaptive
/// Gauss-Hermite quadrature about each observer's mode (Pinheiro JC, Bates DM (1995)
/// J. Comput. Graph. Stat. 4:12-35). Errors from second derivatives by differences.
/// Refuses as fit_ordinal, "lengths_differ", "one_group" (one observer only),
/// "group_is_row" (no observer with two rows); degenerate as fit_ordinal.
OrdinalObservers fit_ordinal_observers(const OrdinalData& data, const std::vector<int>& observer,
                                       const OrdinalObserversOptions& options = {});

} // namespace baize::stats
