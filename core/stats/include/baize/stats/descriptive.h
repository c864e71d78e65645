#pragma once

#include "baize/stats/summary.h"

#include <cstddef>
#include <limits>
#include <optional>
#include <span>

namespace baize::stats {

/// One variable in plain figures. Numbers are NaN where the summary is not usable.
struct Description {
  std::size_t n = 0;
  double mean = std::numeric_limits<double>::quiet_NaN();
  /// Divisor n - 1; absent for one value.
  std::optional<double> sd;
  /// sum (x[i] - mean)(x[i-1] - mean) / sum (x[i] - mean)^2: the values in the
  /// order given. Absent for one value, or where all are equal.
  std::optional<double> autocorrelation_1;
  double smallest = std::numeric_limits<double>::quiet_NaN();
  double lower_quartile = std::numeric_limits<double>::quiet_NaN();
  double median = std::numeric_limits<double>::quiet_NaN();
  double upper_quartile = std::numeric_limits<double>::quiet_NaN();
  double largest = std::numeric_limits<double>::quiet_NaN();
  Summary summary;
};

/// Two passes with compensated sums (Neumaier 1974) and the rounding of the mean
/// given back (Chan, Golub and LeVeque 1983), so that a small spread on a large
/// mean keeps its digits. Refuses "too_few" without a value and "not_finite".
/// Equal values have an sd of 0, which is a finding and not a failure.
/// Source of the definitions: NIST/SEMATECH e-Handbook 1.3.5.
Description describe(std::span<const double> values);

/// The quantile at p of values in any order: at (n - 1) p from the smallest,
/// with straight lines between neighbours (type 7 of Hyndman and Fan 1996).
struct Quantile {
  double value = std::numeric_limits<double>::quiet_NaN();
  Summary summary;
};

/// p from 0 to 1. Refuses "too_few" without a value, "not_finite" and
/// "option_out_of_range".
Quantile quantile(std::span<const double> values, double p);

/// The same of values that stand in order already, where many are asked of one set:
/// at least one value, finite, ascending; p from 0 to 1. Nothing is checked.
double quantile_of_sorted(std::span<const double> sorted, double p);

} // namespace baize::stats
