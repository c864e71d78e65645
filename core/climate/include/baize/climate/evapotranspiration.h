#pragma once

#include "baize/climate/radiation.h"
#include "baize/climate/weather.h"
#include "baize/units/problem.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::climate {

/// Wind at 2 m over short grass from wind at another height (FAO-56 eq. 47),
/// heights of 0.5 to 100 m.
double wind_at_2m(double wind_m_s, double height_m);

/// Hargreaves' reference evapotranspiration from temperature alone (FAO-56
/// eq. 52), mm per day. `extraterrestrial` in MJ per m2 and day; tmax >= tmin.
/// Good to about 10 to 20 % over weeks; a single day can be much further off.
double hargreaves_mm(double tmean_c, double tmin_c, double tmax_c, double extraterrestrial);

/// What the daily equation needs. Only the day of the year, the latitude, tmin
/// and tmax cannot be replaced; everything else may be absent.
struct Et0Inputs {
  int day_of_year = 1;                ///< 1 to 366; for a monthly mean the month's middle day
  std::optional<double> latitude_deg; ///< -90 to 90, south negative
  std::optional<double> elevation_m;  ///< -500 to 9000
  std::optional<double> tmin_c;       ///< -90 to 60
  std::optional<double> tmax_c;       ///< tmin to 60
  /// Moisture, the first one given counts, in this order.
  std::optional<double> vapour_pressure_kpa; ///< 0 to 20
  std::optional<double> dew_point_c;         ///< -90 to 60
  std::optional<double> dry_bulb_c;          ///< psychrometer, with wet_bulb_c
  std::optional<double> wet_bulb_c;
  std::optional<double> humidity_max_pct; ///< 0 to 100
  std::optional<double> humidity_min_pct;
  std::optional<double> humidity_mean_pct;
  /// Sun, the first one given counts.
  std::optional<double> solar_mj_m2;     ///< 0 to 60
  std::optional<double> sunshine_h;      ///< 0 to 24
  std::optional<double> wind_m_s;        ///< 0 to 115
  std::optional<double> wind_height_m;   ///< 0.5 to 100
  std::optional<double> soil_heat_mj_m2; ///< absent: 0, as for a day (eq. 42)
};

/// The inputs that a day of weather at a place gives.
Et0Inputs et0_inputs(const WeatherDay& day, std::optional<double> latitude_deg,
                     std::optional<double> elevation_m);

struct Et0Options {
  CloudLimits clouds = kFaoClouds;
  Angstrom angstrom;
  double temperature_range_coefficient = kInland; ///< 0.1 to 0.3; kCoast near a large water
  double dew_point_below_tmin_c = 0;              ///< 0 to 5; FAO-56 advises 2 to 3 in dry country
  double psychrometer = 0.000662;                 ///< 0.0004 to 0.002 per degree C
  double usual_wind_m_s = 2;                      ///< 0.5 to 10, where none was measured
  double least_wind_m_s = 0.5; ///< 0 to 2; FAO-56 advises 0.5, since still air is never quite still
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

enum class MoistureFrom {
  vapour_pressure,
  dew_point,
  psychrometer,
  humidity_max_and_min,
  humidity_max,
  humidity_mean,
  tmin
};
enum class SolarFrom { measured, sunshine, temperature_range };

/// An input that was not there (or could not stand), and what was used instead.
struct Replaced {
  std::string field; ///< name of the input
  double used = 0;   ///< in the unit of the field
  std::string rule;  ///< a clause: "no moisture was given: the dew point is taken as tmin ..."
  friend bool operator==(const Replaced&, const Replaced&) = default;
};

/// Reference evapotranspiration of a day with every part of it. Temperatures in
/// degrees C, pressures in kPa, radiation in MJ per m2 and day.
struct Et0 {
  double et0_mm = 0; ///< may be slightly below 0 on cold overcast days: dew, not water lost
  double tmean_c = 0;
  double pressure_kpa = 0;
  double psychrometric = 0;
  double slope = 0;
  double saturation_kpa = 0;
  double vapour_pressure_kpa = 0;
  double wind_2m_m_s = 0;
  double extraterrestrial = 0;
  double daylight_h = 0;
  double solar = 0;
  double clear_sky = 0;
  double net_shortwave = 0;
  double net_longwave = 0;
  double net = 0;
  double soil_heat = 0;
  MoistureFrom moisture_from = MoistureFrom::tmin;
  SolarFrom solar_from = SolarFrom::temperature_range;
  std::vector<Replaced> replaced; ///< empty: everything was measured
  bool measured() const { return replaced.empty(); }
};

/// FAO-56 Penman-Monteith (eq. 6), mm per day, of a well-watered grass of 0.12 m.
/// Missing inputs are replaced by the procedures of FAO-56 chapter 3 and each is
/// named in the result. With everything measured the equation agrees with
/// lysimeters to about 5 to 10 % over a month; with replaced inputs expect about
/// 20 % a day. Refuses "missing" where day, latitude, tmin or tmax is not there,
/// "out_of_range" where an input cannot be, "swapped" where tmin is above tmax,
/// and "no_daylight" where the sun does not rise that day.
units::Result<Et0> reference_et0(const Et0Inputs& inputs, const Et0Options& options = {});

/// One hour (FAO-56 eq. 53).
struct HourInputs {
  SunClock clock;
  double elevation_m = 0;
  double temperature_c = 20;
  double humidity_pct = 50;
  double wind_2m_m_s = 2;
  double solar_mj_m2 = 0; ///< in the period
  /// Ratio of solar to clear-sky radiation two to three hours before sunset.
  /// Needed at night, when the hour itself has none.
  std::optional<double> cloud_ratio;
};
struct HourEt0 {
  double et0_mm = 0;
  double extraterrestrial = 0; ///< MJ per m2 and hour, as the rest
  double clear_sky = 0;
  double net_longwave = 0;
  double net = 0;
  double soil_heat = 0;
};
/// Refuses "out_of_range", and "missing" at night without a cloud ratio.
units::Result<HourEt0> reference_et0(const HourInputs& inputs, const CloudLimits& clouds = {});

} // namespace baize::climate
