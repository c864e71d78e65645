#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"

#include <functional>
#include <vector>

namespace baize::stats {

/// The value that a curve with these parameters has for one row of the data.
using CurveModel = std::function<double(const std::vector<double>& parameters, std::size_t row)>;

struct NonlinearOptions {
  int max_iterations = 20000; ///< 1 to 1000000
  /// Of the residual's part that the parameters could still take away, over the part
  /// they cannot, both per degree of freedom (Bates DM, Watts DG (1981) Technometrics
  /// 23:179-183); above 0, below 1.
  double tolerance = 1e-9;
  double confidence = 0.95; ///< of profile intervals; above 0 and below 1
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct CurveParameter {
  double value = 0;
  double standard_error = 0; ///< by the curve's slope at the optimum
};

struct NonlinearFit {
  Summary summary;
  std::vector<CurveParameter> parameters;
  std::vector<std::vector<double>> covariance;
  std::vector<double> fitted; ///< one for each row
  double residual_ss = 0;
  double residual_sd = 0;
  int residual_df = 0; ///< rows less parameters
};

/// Parameters of a curve by least squares: Levenberg-Marquardt steps, each by QR of the
/// scaled slopes in long double; slopes by five-point differences. Marquardt DW (1963)
/// SIAM J. 11:431-441; More JJ (1978) Lect. Notes Math. 630:105-116 (scaling); Nielsen HB
/// (1999) IMM-REP-1999-05 (damping). It finds a minimum near `start`, not the deepest.
/// y: one value a row. start: where the curve is finite on every row.
/// Refuses "option_out_of_range", "too_few" (1 parameter; more rows than parameters),
/// "not_finite" (y, start, or the curve at the start); degenerate "singular_design" where
/// at the optimum the data cannot tell the parameters apart; not_converged otherwise.
NonlinearFit nonlinear_least_squares(const std::vector<double>& y, const CurveModel& model,
                                     const std::vector<double>& start,
                                     const NonlinearOptions& options = {});

struct ProfileInterval {
  Summary summary;
  Interval interval; ///< an end is infinite where the data set none
};

/// Interval of one parameter from the profile: all values for which the residual sum of
/// squares, the other parameters fitted anew, is no more than t^2 s^2 above the least.
/// Unlike standard errors it knows of the curve's bend. Bates DM, Watts DG (1988)
/// Nonlinear Regression Analysis and Its Applications, 6.1.
/// fit: usable, of the same y and model. parameter: its place. An end further than
/// 1000 standard errors away counts as none. Refuses "option_out_of_range",
/// "no_such_parameter" and "fit_not_usable"; degenerate "lower_minimum" where the profile
/// finds a smaller residual than the fit: start again from there.
ProfileInterval profile_interval(const std::vector<double>& y, const CurveModel& model,
                                 const NonlinearFit& fit, std::size_t parameter,
                                 const NonlinearOptions& options = {});

} // namespace baize::stats
