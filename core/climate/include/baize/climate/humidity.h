#pragma once

namespace baize::climate {

/// The air's pressure and moisture, after Allen RG, Pereira LS, Raes D, Smith M
/// (1998) FAO Irrigation and Drainage Paper 56, chapter 3. Temperatures are in
/// degrees C, pressures in kPa. All are plain formulas: arguments inside the
/// stated ranges give finite results; nothing is refused here.

/// Atmospheric pressure (eq. 7) at `elevation_m`, -500 to 9000 m above the sea.
double atmospheric_pressure_kpa(double elevation_m);

/// Psychrometric constant (eq. 8), kPa per degree C: 0.665e-3 times the pressure.
double psychrometric_constant(double pressure_kpa);

/// Saturation vapour pressure (eq. 11) at a temperature of -90 to 60 degrees C.
double saturation_vapour_pressure_kpa(double temperature_c);

/// Mean saturation vapour pressure of a day (eq. 12): the mean of the pressures
/// at tmin and tmax, which is above the pressure at their mean.
double mean_saturation_vapour_pressure_kpa(double tmin_c, double tmax_c);

/// Slope of the saturation vapour pressure curve (eq. 13), kPa per degree C.
double vapour_pressure_slope(double temperature_c);

/// Actual vapour pressure from the dew point (eq. 14).
double vapour_pressure_from_dew_point_kpa(double dew_point_c);

/// Coefficients of eq. 16, per degree C, by kind of psychrometer.
inline constexpr double kVentilatedPsychrometer = 0.000662; ///< air moved at about 5 m/s
inline constexpr double kNaturalPsychrometer = 0.000800;    ///< about 1 m/s
inline constexpr double kIndoorPsychrometer = 0.001200;     ///< no ventilation

/// Actual vapour pressure from dry and wet bulb (eq. 15 and 16).
double vapour_pressure_from_psychrometer_kpa(double dry_c, double wet_c, double pressure_kpa,
                                             double coefficient = kVentilatedPsychrometer);

/// Actual vapour pressure from the day's highest and lowest relative humidity,
/// 0 to 100 % (eq. 17): the most trustworthy of the three humidity formulas.
double vapour_pressure_from_humidity_kpa(double tmin_c, double tmax_c, double humidity_max_pct,
                                         double humidity_min_pct);

/// From the highest relative humidity alone (eq. 18), where the lowest is in doubt.
double vapour_pressure_from_humidity_max_kpa(double tmin_c, double humidity_max_pct);

/// From the mean relative humidity (eq. 19); the least certain of the three.
double vapour_pressure_from_humidity_mean_kpa(double tmin_c, double tmax_c,
                                              double humidity_mean_pct);

} // namespace baize::climate
