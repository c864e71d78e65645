#pragma once

#include "baize/climate/weather.h"
#include "baize/units/problem.h"

#include <optional>

namespace baize::climate {

/// Growth potential: exp(-((T - optimum) / spread)^2 / 2), 0 to 1, T the day's
/// mean air temperature. Gelernter and Stowell (2005). A rule of thumb: no
/// uncertainty was published with it. `problem` refuses an optimum outside 0 to 50
/// degrees C and a spread outside 0.5 to 30 with code "growth_options_out_of_range".
struct GrowthOptions {
  double optimum_c = 20;
  double spread_c = 5.5;
  bool plateau = false; ///< stays 1 above the optimum (their later form for warm-season grass)
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
  friend bool operator==(const GrowthOptions&, const GrowthOptions&) = default;
};

inline constexpr GrowthOptions kCoolSeason{20, 5.5, false};
inline constexpr GrowthOptions kWarmSeason{31, 7, false};

double growth_potential(double mean_temperature_c, const GrowthOptions& options);
/// Absent where the day has no mean temperature.
std::optional<double> growth_potential(const WeatherDay& day, const GrowthOptions& options);

/// Sum of growth potential over the days after `from` up to and with `to`.
struct GrowthDays {
  double sum = 0;
  int days = 0;    ///< to - from
  int missing = 0; ///< of them without a temperature; the sum leaves them out
  bool complete() const { return missing == 0; }
};
GrowthDays growth_days(const Weather& weather, units::Day from, units::Day to,
                       const GrowthOptions& options);

} // namespace baize::climate
