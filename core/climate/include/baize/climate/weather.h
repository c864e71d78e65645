#pragma once

#include "baize/units/day.h"

#include <map>
#include <optional>

namespace baize::climate {

/// One day's weather; whatever the station did not give is absent.
struct WeatherDay {
  units::Day day;
  std::optional<double> tmin_c;
  std::optional<double> tmax_c;
  std::optional<double> tmean_c; ///< only where the station gives its own mean
  std::optional<double> rain_mm; ///< a trace is 0 with `rain_trace`
  bool rain_trace = false;
  std::optional<double> et0_mm; ///< as the file gives it
  std::optional<double> solar_mj_m2;
  std::optional<double> wind_m_s;
  std::optional<double> wind_height_m;
  std::optional<double> dew_point_c;
  std::optional<double> humidity_max_pct;
  std::optional<double> humidity_min_pct;
  friend bool operator==(const WeatherDay&, const WeatherDay&) = default;
};

using Weather = std::map<units::Day, WeatherDay>;

/// The station's own mean, else (tmin + tmax) / 2, else absent.
std::optional<double> mean_temperature_c(const WeatherDay& day);

} // namespace baize::climate
