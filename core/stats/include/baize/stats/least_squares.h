#pragma once

#include "baize/stats/summary.h"

#include <optional>
#include <vector>

namespace baize::stats {

struct LeastSquaresRow {
  double y = 0;
  std::vector<double> x; ///< as many for each row; the constant is not among them
};

struct LeastSquaresOptions {
  bool constant = true; ///< fit a constant, as the first coefficient
};

struct LinearCoefficient {
  double value = 0;
  double standard_error = 0;
  double p = 1; ///< two-sided, of value / standard error by Student's t
};

struct LeastSquaresFit {
  Summary summary;
  std::vector<LinearCoefficient> coefficients;
  std::vector<std::vector<double>> covariance; ///< of the coefficients
  std::vector<double> fitted;                  ///< one for each row, in the order given
  double residual_sd = 0;
  double residual_ss = 0;   ///< sum of squares
  int residual_df = 0;      ///< rows less coefficients
  double regression_ss = 0; ///< about the mean of y with a constant, about 0 without
  int regression_df = 0;
  double r_squared = 0;    ///< regression_ss over the sum of both
  std::optional<double> f; ///< absent where no residual is left, or only a constant is fitted
  std::optional<double> f_p;
};

/// y = b0 + b1 x1 + ... by Householder QR of the columns scaled to length 1, worked
/// in long double: without it a polynomial of the tenth degree (NIST StRD Filip)
/// keeps seven digits only. Standard errors assume equal, independent errors.
/// Golub GH, Van Loan CF (2013) Matrix Computations, 4th ed., 5.2 and 5.3.
/// Refuses "too_few" (more rows than coefficients needed), "lengths_differ",
/// "not_finite"; degenerate "singular_design" where a column is, to 13 digits, a
/// sum of those before it, "all_equal" where y leaves nothing to explain.
LeastSquaresFit least_squares(const std::vector<LeastSquaresRow>& rows,
                              const LeastSquaresOptions& options = {});

} // namespace baize::stats
