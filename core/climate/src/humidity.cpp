#include "baize/climate/humidity.h"

#include <cmath>

namespace baize::climate {

double atmospheric_pressure_kpa(double elevation_m) {
  return 101.3 * std::pow((293 - 0.0065 * elevation_m) / 293, 5.26);
}

double psychrometric_constant(double pressure_kpa) {
  return 0.665e-3 * pressure_kpa;
}

double saturation_vapour_pressure_kpa(double temperature_c) {
  return 0.6108 * std::exp(17.27 * temperature_c / (temperature_c + 237.3));
}

double mean_saturation_vapour_pressure_kpa(double tmin_c, double tmax_c) {
  return (saturation_vapour_pressure_kpa(tmin_c) + saturation_vapour_pressure_kpa(tmax_c)) / 2;
}

double vapour_pressure_slope(double temperature_c) {
  const double above = temperature_c + 237.3;
  return 4098 * saturation_vapour_pressure_kpa(temperature_c) / (above * above);
}

double vapour_pressure_from_dew_point_kpa(double dew_point_c) {
  return saturation_vapour_pressure_kpa(dew_point_c);
}

double vapour_pressure_from_psychrometer_kpa(double dry_c, double wet_c, double pressure_kpa,
                                             double coefficient) {
  return saturation_vapour_pressure_kpa(wet_c) - coefficient * pressure_kpa * (dry_c - wet_c);
}

double vapour_pressure_from_humidity_kpa(double tmin_c, double tmax_c, double humidity_max_pct,
                                         double humidity_min_pct) {
  // The air is dampest when it is coldest, so the highest humidity belongs to tmin.
  return (saturation_vapour_pressure_kpa(tmin_c) * humidity_max_pct / 100 +
          saturation_vapour_pressure_kpa(tmax_c) * humidity_min_pct / 100) /
         2;
}

double vapour_pressure_from_humidity_max_kpa(double tmin_c, double humidity_max_pct) {
  return saturation_vapour_pressure_kpa(tmin_c) * humidity_max_pct / 100;
}

double vapour_pressure_from_humidity_mean_kpa(double tmin_c, double tmax_c,
                                              double humidity_mean_pct) {
  return humidity_mean_pct / 100 * mean_saturation_vapour_pressure_kpa(tmin_c, tmax_c);
}

} // namespace baize::climate
