#pragma once

#include "aft_design.h"
#include "aft_newton.h"

namespace baize::stats::detail {

/// A fit with what it was made of, for the methods that go on from it.
struct AftFitting {
  AftFit fit; ///< its summary is usable where the rest is
  Design design;
  StandardTimes times;
  DistinctRows distinct; ///< of times and design
  Optimum optimum;
};

/// Everything of fit_aft but the comparison with the constant only.
AftFitting begin_aft(const std::vector<AftObservation>& observations, const AftOptions& options);
Summary summary_of(const Optimum& optimum);
/// Fills coefficients, scale, errors and covariance from ratios and rate on the
/// standard scale and their covariance.
void translate(const AftFitting& from, const Optimum& optimum, AftFit& fit);
/// Fills the comparison with the constant only.
void compare_with_constant(const AftFitting& from, const AftOptions& options, AftFit& fit);
/// Unusable where a number is not finite.
void check_finite(AftFit& fit);

} // namespace baize::stats::detail
