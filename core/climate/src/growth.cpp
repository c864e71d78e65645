#include "baize/climate/growth.h"

#include "ranges.h"

#include <array>
#include <cmath>

namespace baize::climate {

std::optional<units::Problem> GrowthOptions::problem() const {
  const std::array ranges{Ranged{"optimum_c", optimum_c, 0, 50, "degrees C"},
                          Ranged{"spread_c", spread_c, 0.5, 30, "degrees C"}};
  return first_outside(ranges, "growth_options_out_of_range");
}

std::optional<double> mean_temperature_c(const WeatherDay& day) {
  if (day.tmean_c) {
    return day.tmean_c;
  }
  if (day.tmin_c && day.tmax_c) {
    return (*day.tmin_c + *day.tmax_c) / 2;
  }
  return std::nullopt;
}

double growth_potential(double mean_temperature_c, const GrowthOptions& options) {
  if (options.plateau && mean_temperature_c >= options.optimum_c) {
    return 1;
  }
  const double away = (mean_temperature_c - options.optimum_c) / options.spread_c;
  return std::exp(-away * away / 2);
}

std::optional<double> growth_potential(const WeatherDay& day, const GrowthOptions& options) {
  const auto mean = mean_temperature_c(day);
  if (!mean) {
    return std::nullopt;
  }
  return growth_potential(*mean, options);
}

GrowthDays growth_days(const Weather& weather, units::Day from, units::Day to,
                       const GrowthOptions& options) {
  GrowthDays result;
  if (to <= from) {
    return result;
  }
  result.days = to - from;
  result.missing = result.days;
  for (auto it = weather.upper_bound(from); it != weather.end() && it->first <= to; ++it) {
    if (const auto potential = growth_potential(it->second, options)) {
      result.sum += *potential;
      --result.missing;
    }
  }
  return result;
}

} // namespace baize::climate
