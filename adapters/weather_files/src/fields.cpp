#include "fields.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace baize::weather_files {

namespace {

using climate::WeatherDay;

// Records on earth lie well inside: -89.2 and 56.7 degrees C, 1825 mm in a day,
// 113 m/s (World Meteorological Organization archive of extremes; from memory).
constexpr std::array kFields{
    Field{"tmin_c", &WeatherDay::tmin_c, "C", -90, 60, 60},
    Field{"tmax_c", &WeatherDay::tmax_c, "C", -90, 60, 60},
    Field{"tmean_c", &WeatherDay::tmean_c, "C", -90, 60, 60},
    Field{"rain_mm", &WeatherDay::rain_mm, "mm", 0, 2000, 2000},
    Field{"et0_mm", &WeatherDay::et0_mm, "mm", -2, 30, 30},
    Field{"solar_mj_m2", &WeatherDay::solar_mj_m2, "MJ/m2", 0, 60, 50},
    Field{"wind_m_s", &WeatherDay::wind_m_s, "m/s", 0, 115, 115},
    Field{"dew_point_c", &WeatherDay::dew_point_c, "C", -90, 60, 60},
    Field{"humidity_max_pct", &WeatherDay::humidity_max_pct, "%", 0, 100, 1000},
    Field{"humidity_min_pct", &WeatherDay::humidity_min_pct, "%", 0, 100, 1000},
};

constexpr std::array kUnits{
    Unit{"C", "C", 0, 1},
    Unit{"F", "C", -32, 5.0 / 9},
    Unit{"mm", "mm", 0, 1},
    Unit{"cm", "mm", 0, 10},
    Unit{"in", "mm", 0, 25.4},
    Unit{"m/s", "m/s", 0, 1},
    Unit{"km/h", "m/s", 0, 1 / 3.6},
    Unit{"mph", "m/s", 0, 0.44704},
    Unit{"kn", "m/s", 0, 1852.0 / 3600},
    Unit{"MJ/m2", "MJ/m2", 0, 1},
    Unit{"W/m2", "MJ/m2", 0, 0.0864},
    Unit{"kWh/m2", "MJ/m2", 0, 3.6},
    Unit{"J/cm2", "MJ/m2", 0, 0.01},
    Unit{"%", "%", 0, 1},
};

} // namespace

std::span<const Field> fields() {
  return kFields;
}

std::optional<std::size_t> field_index(std::string_view name) {
  const auto found = std::find_if(kFields.begin(), kFields.end(),
                                  [name](const Field& field) { return name == field.name; });
  if (found == kFields.end()) {
    return std::nullopt;
  }
  return static_cast<std::size_t>(found - kFields.begin());
}

std::span<const Unit> known_units() {
  return kUnits;
}

const Unit* find_unit(std::string_view name) {
  const auto found = std::find_if(kUnits.begin(), kUnits.end(),
                                  [name](const Unit& unit) { return name == unit.name; });
  return found == kUnits.end() ? nullptr : &*found;
}

double scaled(double value, double factor) {
  const double inverse = std::round(1 / factor);
  const bool is_a_part = factor < 1 && std::fabs(inverse * factor - 1) < 1e-12;
  return is_a_part ? value / inverse : value * factor;
}

double converted(double value, const Unit& unit) {
  return scaled(value + unit.add, unit.multiply);
}

} // namespace baize::weather_files
