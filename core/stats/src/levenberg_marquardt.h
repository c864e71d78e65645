#pragma once

#include "baize/stats/nonlinear_least_squares.h"
#include "householder.h"

namespace baize::stats::detail {

/// A search for the least residual, some parameters held where they are.
struct CurveSearch {
  const std::vector<double>& y;
  const CurveModel& model;
  std::vector<std::size_t> free; ///< places of the parameters that may move
  int max_iterations = 0;
  double tolerance = 0;
};

struct CurveMinimum {
  std::vector<double> parameters;
  Column residual; ///< y less the curve
  long double ss = 0;
  int iterations = 0;
  bool converged = false;
};

/// y less the curve; empty where the curve is not finite on some row.
Column residual_at(const CurveSearch& search, const std::vector<double>& parameters);
/// The curve's slope by each free parameter; empty where not finite.
std::vector<Column> slopes_at(const CurveSearch& search, const std::vector<double>& parameters);

CurveMinimum levenberg_marquardt(const CurveSearch& search, std::vector<double> start);

} // namespace baize::stats::detail
