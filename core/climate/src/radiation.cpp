#include "baize/climate/radiation.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace baize::climate {

namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kSolarConstant = 0.0820; // MJ per m2 and minute
constexpr double kZeroKelvin = 273.16;    // as FAO-56 prints it

double radians(double degrees) {
  return degrees * kPi / 180;
}

double fourth_power(double x) {
  return x * x * x * x;
}

double longwave_factors(double vapour_pressure_kpa, double cloud_ratio) {
  return (0.34 - 0.14 * std::sqrt(std::max(vapour_pressure_kpa, 0.0))) *
         (1.35 * cloud_ratio - 0.35);
}

/// Correction of clock time for the season (eq. 32 and 33), hours.
double seasonal_correction(int day_of_year) {
  const double b = 2 * kPi * (day_of_year - 81) / 364;
  return 0.1645 * std::sin(2 * b) - 0.1255 * std::cos(b) - 0.025 * std::sin(b);
}

} // namespace

double inverse_sun_distance(int day_of_year) {
  return 1 + 0.033 * std::cos(2 * kPi / 365 * day_of_year);
}

double solar_declination(int day_of_year) {
  return 0.409 * std::sin(2 * kPi / 365 * day_of_year - 1.39);
}

double sunset_hour_angle(double latitude_deg, int day_of_year) {
  const double cosine = -std::tan(radians(latitude_deg)) * std::tan(solar_declination(day_of_year));
  return std::acos(std::clamp(cosine, -1.0, 1.0));
}

double extraterrestrial_radiation(double latitude_deg, int day_of_year) {
  const double latitude = radians(latitude_deg);
  const double declination = solar_declination(day_of_year);
  const double sunset = sunset_hour_angle(latitude_deg, day_of_year);
  const double height = sunset * std::sin(latitude) * std::sin(declination) +
                        std::cos(latitude) * std::cos(declination) * std::sin(sunset);
  return std::max(0.0, 24 * 60 / kPi * kSolarConstant * inverse_sun_distance(day_of_year) * height);
}

double daylight_hours(double latitude_deg, int day_of_year) {
  return 24 / kPi * sunset_hour_angle(latitude_deg, day_of_year);
}

double extraterrestrial_radiation(const SunClock& clock) {
  const double latitude = radians(clock.latitude_deg);
  const double declination = solar_declination(clock.day_of_year);
  const double sunset = sunset_hour_angle(clock.latitude_deg, clock.day_of_year);
  // FAO-56 counts longitudes west of Greenwich; here they are east.
  const double solar_time = clock.mid_hour +
                            0.06667 * (clock.longitude_deg - clock.zone_longitude_deg) +
                            seasonal_correction(clock.day_of_year);
  // Into -pi to pi, so that a clock far from the sun still names the same moment.
  const double middle = std::remainder(kPi / 12 * (solar_time - 12), 2 * kPi);
  const double half = kPi * clock.length_h / 24;
  const double from = std::clamp(middle - half, -sunset, sunset);
  const double to = std::clamp(middle + half, -sunset, sunset);
  const double height =
      (to - from) * std::sin(latitude) * std::sin(declination) +
      std::cos(latitude) * std::cos(declination) * (std::sin(to) - std::sin(from));
  return std::max(0.0, 12 * 60 / kPi * kSolarConstant * inverse_sun_distance(clock.day_of_year) *
                           height);
}

double solar_from_sunshine(double sunshine_h, double daylight_h, double extraterrestrial,
                           const Angstrom& angstrom) {
  const double share = daylight_h > 0 ? sunshine_h / daylight_h : 0;
  return (angstrom.overcast + angstrom.clear_more * share) * extraterrestrial;
}

double solar_from_temperature_range(double tmin_c, double tmax_c, double extraterrestrial,
                                    double coefficient) {
  return coefficient * std::sqrt(std::max(tmax_c - tmin_c, 0.0)) * extraterrestrial;
}

double clear_sky_radiation(double elevation_m, double extraterrestrial) {
  return (0.75 + 2e-5 * elevation_m) * extraterrestrial;
}

double net_shortwave(double solar) {
  return (1 - 0.23) * solar;
}

double limited_cloud_ratio(double solar, double clear_sky, const CloudLimits& limits) {
  if (clear_sky <= 0) {
    return limits.highest;
  }
  return std::max(limits.lowest, std::min(limits.highest, solar / clear_sky));
}

double net_longwave(double tmin_c, double tmax_c, double vapour_pressure_kpa, double cloud_ratio) {
  const double mean_fourth =
      (fourth_power(tmax_c + kZeroKelvin) + fourth_power(tmin_c + kZeroKelvin)) / 2;
  return 4.903e-9 * mean_fourth * longwave_factors(vapour_pressure_kpa, cloud_ratio);
}

double net_longwave_hour(double temperature_c, double vapour_pressure_kpa, double cloud_ratio) {
  return 2.043e-10 * fourth_power(temperature_c + kZeroKelvin) *
         longwave_factors(vapour_pressure_kpa, cloud_ratio);
}

double net_radiation(double net_shortwave_in, double net_longwave_out) {
  return net_shortwave_in - net_longwave_out;
}

double monthly_soil_heat(double previous_c, double next_c) {
  return 0.07 * (next_c - previous_c);
}

double monthly_soil_heat_so_far(double previous_c, double current_c) {
  return 0.14 * (current_c - previous_c);
}

double hourly_soil_heat(double net_radiation_hour, bool daylight) {
  return (daylight ? 0.1 : 0.5) * net_radiation_hour;
}

} // namespace baize::climate
