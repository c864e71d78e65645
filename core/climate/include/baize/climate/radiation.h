#pragma once

namespace baize::climate {

/// Sun and radiation, after FAO Irrigation and Drainage Paper 56 (1998), chapter
/// 3. Latitudes are in degrees, north positive, south negative; the day of the
/// year is 1 to 366; daily amounts are MJ per m2 and day. Plain formulas:
/// arguments inside the stated ranges give finite results.

/// Inverse relative distance of the earth from the sun (eq. 23), about 0.967 to 1.033.
double inverse_sun_distance(int day_of_year);
/// The sun's declination (eq. 24), radians.
double solar_declination(int day_of_year);
/// Sunset hour angle (eq. 25), radians; pi where the sun does not set, 0 where it does not rise.
double sunset_hour_angle(double latitude_deg, int day_of_year);

/// Radiation at the top of the atmosphere over the day (eq. 21); 0 in polar night.
double extraterrestrial_radiation(double latitude_deg, int day_of_year);
/// Longest possible sunshine (eq. 34), 0 to 24 hours.
double daylight_hours(double latitude_deg, int day_of_year);

/// The place and clock of an hourly record.
struct SunClock {
  double latitude_deg = 0;
  double longitude_deg = 0;      ///< east positive, west negative
  double zone_longitude_deg = 0; ///< of the middle of the time zone: 15 per hour from UTC
  int day_of_year = 1;
  double mid_hour = 12; ///< standard clock time at the middle of the period, 0 to 24
  double length_h = 1;
};
/// Radiation at the top of the atmosphere over a period of an hour or less
/// (eq. 28 to 33), MJ per m2 in that period. Only the part between sunrise and
/// sunset counts, so it is 0 at night.
double extraterrestrial_radiation(const SunClock& clock);

/// Angstrom's coefficients (eq. 35): the parts of the extraterrestrial radiation
/// that reach the ground under an overcast sky, and the more under a clear one.
struct Angstrom {
  double overcast = 0.25;
  double clear_more = 0.50;
};
/// Solar radiation from measured sunshine (eq. 35).
double solar_from_sunshine(double sunshine_h, double daylight_h, double extraterrestrial,
                           const Angstrom& angstrom = {});

inline constexpr double kInland = 0.16; ///< eq. 50, where land dominates
inline constexpr double kCoast = 0.19;  ///< eq. 50, on or near a large water
/// Solar radiation from the day's temperature range (eq. 50), tmax >= tmin.
double solar_from_temperature_range(double tmin_c, double tmax_c, double extraterrestrial,
                                    double coefficient = kInland);

/// Solar radiation under a clear sky (eq. 37).
double clear_sky_radiation(double elevation_m, double extraterrestrial);

/// Net shortwave radiation (eq. 38) with the reference crop's albedo of 0.23.
double net_shortwave(double solar);

/// Limits of the ratio of solar to clear-sky radiation in the longwave equation.
/// FAO-56 limits it above only. ASCE-EWRI (2005) limits it to 0.3 to 1 as well
/// below, which matters on heavily overcast days (up to 0.3 mm).
struct CloudLimits {
  double lowest = 0;
  double highest = 1;
};
inline constexpr CloudLimits kFaoClouds{0, 1};
inline constexpr CloudLimits kAsceClouds{0.3, 1};
double limited_cloud_ratio(double solar, double clear_sky, const CloudLimits& limits = kFaoClouds);

/// Net outgoing longwave radiation of a day (eq. 39), from the limited cloud ratio.
double net_longwave(double tmin_c, double tmax_c, double vapour_pressure_kpa, double cloud_ratio);
/// Of one hour (eq. 39 with the hourly constant), MJ per m2 and hour.
double net_longwave_hour(double temperature_c, double vapour_pressure_kpa, double cloud_ratio);

/// Net radiation (eq. 40).
double net_radiation(double net_shortwave_in, double net_longwave_out);

/// Soil heat flux of a month (eq. 43) from the mean air temperatures of the
/// months before and after. Over a day or ten days it is small and taken as 0 (eq. 42).
double monthly_soil_heat(double previous_c, double next_c);
/// The same where the next month is not known yet (eq. 44).
double monthly_soil_heat_so_far(double previous_c, double current_c);
/// Of an hour (eq. 45 and 46): 0.1 of the net radiation by day, 0.5 by night.
double hourly_soil_heat(double net_radiation_hour, bool daylight);

} // namespace baize::climate
