#pragma once

#include "baize/stats/summary.h"

#include <limits>
#include <optional>
#include <vector>

namespace baize::stats {

/// Whether values one after another go together.
struct LjungBox {
  int values = 0;
  std::vector<double> autocorrelation; ///< at lags 1, 2 ...
  double statistic = std::numeric_limits<double>::quiet_NaN();
  double df = 0;
  double p = std::numeric_limits<double>::quiet_NaN(); ///< of more than that by chance
  Summary summary;
};

struct LjungBoxOptions {
  int lags = 8; ///< 1 to 100
  int fitted =
      0; ///< parameters fitted to the values that shape their autocorrelation, below `lags`
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Q = n (n + 2) sum over lags of r_k^2 / n_k against chi-square with lags - fitted
/// degrees of freedom; r_k = sum x_t x_(t-k) / sum x_t^2, each series about the
/// mean of all, n_k its number of products (n - k for one series). Several series,
/// none touching another, share one r_k. Ljung GM, Box GEP (1978) Biometrika
/// 65:297-303; the taking off of fitted parameters: Harvey AC (1989) Forecasting,
/// Structural Time Series Models and the Kalman Filter, 5.4.2.
/// Refuses "option_out_of_range", "not_finite", "too_few" (more than twice as many
/// values as lags needed); degenerate "all_equal".
LjungBox ljung_box(const std::vector<std::vector<double>>& series,
                   const LjungBoxOptions& options = {});

} // namespace baize::stats
