#pragma once

#include "baize/stats/summary.h"

#include <limits>
#include <span>

namespace baize::stats {

/// The area under values measured at several times, in value times time.
struct Area {
  double duration = std::numeric_limits<double>::quiet_NaN(); ///< last time minus first
  /// Straight lines between readings: sum (v[i] + v[i+1]) / 2 (t[i+1] - t[i]).
  double trapezoid = std::numeric_limits<double>::quiet_NaN();
  /// The same, with the first and last reading counted as fully as the others:
  /// trapezoid + (first + last) / 2 * duration / (n - 1).
  double stairs = std::numeric_limits<double>::quiet_NaN();
  double mean_height = std::numeric_limits<double>::quiet_NaN(); ///< trapezoid / duration
  Summary summary;
};

/// `times` strictly rising, in any unit; `values` of any sign. Refuses
/// "lengths_differ", "too_few" (below 2), "not_finite" and "not_rising". The area
/// carries no uncertainty of its own: compare areas of several plots for that.
/// Source: trapezoid, Shaner and Finney (1977) Phytopathology 67:1051-1056;
/// stairs, Simko and Piepho (2012) Phytopathology 102:381-389.
Area area_under_curve(std::span<const double> times, std::span<const double> values);

} // namespace baize::stats
