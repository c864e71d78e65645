#include "baize/climate/humidity.h"
#include "penman_monteith.h"
#include "ranges.h"

#include <array>

namespace baize::climate {

namespace {

std::optional<units::Problem> range_problem(const HourInputs& in) {
  const std::array ranges{
      Ranged{"latitude_deg", in.clock.latitude_deg, -90, 90, "degrees"},
      Ranged{"longitude_deg", in.clock.longitude_deg, -180, 180, "degrees"},
      Ranged{"zone_longitude_deg", in.clock.zone_longitude_deg, -180, 210, "degrees"},
      Ranged{"day_of_year", in.clock.day_of_year, 1, 366, "(day of the year)"},
      Ranged{"mid_hour", in.clock.mid_hour, 0, 24, "hours"},
      Ranged{"length_h", in.clock.length_h, 1, 1, "hour, since the equation is for one"},
      Ranged{"elevation_m", in.elevation_m, -500, 9000, "m"},
      Ranged{"temperature_c", in.temperature_c, -90, 60, "degrees C"},
      Ranged{"humidity_pct", in.humidity_pct, 0, 100, "%"},
      Ranged{"wind_2m_m_s", in.wind_2m_m_s, 0, 115, "m/s"},
      Ranged{"solar_mj_m2", in.solar_mj_m2, 0, 6, "MJ per m2 and hour"},
      Ranged{"cloud_ratio", in.cloud_ratio, 0, 1, "(ratio)"},
  };
  return first_outside(ranges, "out_of_range");
}

} // namespace

units::Result<HourEt0> reference_et0(const HourInputs& in, const CloudLimits& clouds) {
  if (auto found = range_problem(in)) {
    return units::Refusal(*found);
  }
  HourEt0 out;
  out.extraterrestrial = extraterrestrial_radiation(in.clock);
  out.clear_sky = clear_sky_radiation(in.elevation_m, out.extraterrestrial);
  const bool daylight = out.extraterrestrial > 0;
  if (!daylight && !in.cloud_ratio) {
    return units::refuse("missing", "cloud_ratio", "",
                         "the ratio of solar to clear-sky radiation before sunset, at night");
  }
  const double ratio =
      in.cloud_ratio.value_or(limited_cloud_ratio(in.solar_mj_m2, out.clear_sky, clouds));
  const double saturation = saturation_vapour_pressure_kpa(in.temperature_c);
  const double actual = saturation * in.humidity_pct / 100;
  out.net_longwave = net_longwave_hour(in.temperature_c, actual, ratio);
  out.net = net_radiation(net_shortwave(in.solar_mj_m2), out.net_longwave);
  out.soil_heat = hourly_soil_heat(out.net, daylight);
  const Balance balance{out.net - out.soil_heat,
                        vapour_pressure_slope(in.temperature_c),
                        psychrometric_constant(atmospheric_pressure_kpa(in.elevation_m)),
                        in.temperature_c,
                        in.wind_2m_m_s,
                        saturation - actual};
  out.et0_mm = penman_monteith_mm(balance, 37);
  return out;
}

} // namespace baize::climate
