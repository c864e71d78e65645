#include "baize/units/number.h"
#include "penman_monteith.h"
#include "ranges.h"

#include <array>

namespace baize::climate {

namespace {

std::optional<units::Problem> range_problem(const Et0Inputs& in) {
  const std::array ranges{
      Ranged{"day_of_year", in.day_of_year, 1, 366, "(day of the year)"},
      Ranged{"latitude_deg", in.latitude_deg, -90, 90, "degrees"},
      Ranged{"elevation_m", in.elevation_m, -500, 9000, "m"},
      Ranged{"tmin_c", in.tmin_c, -90, 60, "degrees C"},
      Ranged{"tmax_c", in.tmax_c, -90, 60, "degrees C"},
      Ranged{"vapour_pressure_kpa", in.vapour_pressure_kpa, 0, 20, "kPa"},
      Ranged{"dew_point_c", in.dew_point_c, -90, 60, "degrees C"},
      Ranged{"dry_bulb_c", in.dry_bulb_c, -90, 60, "degrees C"},
      Ranged{"wet_bulb_c", in.wet_bulb_c, -90, 60, "degrees C"},
      Ranged{"humidity_max_pct", in.humidity_max_pct, 0, 100, "%"},
      Ranged{"humidity_min_pct", in.humidity_min_pct, 0, 100, "%"},
      Ranged{"humidity_mean_pct", in.humidity_mean_pct, 0, 100, "%"},
      Ranged{"solar_mj_m2", in.solar_mj_m2, 0, 60, "MJ per m2 and day"},
      Ranged{"sunshine_h", in.sunshine_h, 0, 24, "hours"},
      Ranged{"wind_m_s", in.wind_m_s, 0, 115, "m/s"},
      Ranged{"wind_height_m", in.wind_height_m, 0.5, 100, "m"},
      Ranged{"soil_heat_mj_m2", in.soil_heat_mj_m2, -20, 20, "MJ per m2 and day"},
  };
  return first_outside(ranges, "out_of_range");
}

std::optional<units::Problem> missing_problem(const Et0Inputs& in) {
  const auto missing = [](const char* field, const char* why) {
    return units::Problem{"missing", field, "", why, ""};
  };
  if (!in.latitude_deg) {
    return missing("latitude_deg", "the latitude of the place, since the sun's path needs it");
  }
  if (!in.tmin_c) {
    return missing("tmin_c", "the day's lowest temperature, since nothing can stand for it");
  }
  if (!in.tmax_c) {
    return missing("tmax_c", "the day's highest temperature, since nothing can stand for it");
  }
  return std::nullopt;
}

} // namespace

std::optional<units::Problem> input_problem(const Et0Inputs& inputs) {
  if (auto found = missing_problem(inputs)) {
    return found;
  }
  if (auto found = range_problem(inputs)) {
    return found;
  }
  if (*inputs.tmin_c > *inputs.tmax_c) {
    return units::Problem{"swapped", "tmin_c", units::write_number(*inputs.tmin_c),
                          "no higher than tmax_c, which is " + units::write_number(*inputs.tmax_c),
                          ""};
  }
  return std::nullopt;
}

std::optional<units::Problem> Et0Options::problem() const {
  const std::array ranges{
      Ranged{"clouds.lowest", clouds.lowest, 0, 1, "(ratio)"},
      Ranged{"clouds.highest", clouds.highest, clouds.lowest, 1, "(ratio)"},
      Ranged{"angstrom.overcast", angstrom.overcast, 0, 1, "(share)"},
      Ranged{"angstrom.clear_more", angstrom.clear_more, 0, 1, "(share)"},
      Ranged{"temperature_range_coefficient", temperature_range_coefficient, 0.1, 0.3,
             "per root of a degree C"},
      Ranged{"dew_point_below_tmin_c", dew_point_below_tmin_c, 0, 5, "degrees C"},
      Ranged{"psychrometer", psychrometer, 0.0004, 0.002, "per degree C"},
      Ranged{"usual_wind_m_s", usual_wind_m_s, 0.5, 10, "m/s"},
      Ranged{"least_wind_m_s", least_wind_m_s, 0, 2, "m/s"},
  };
  return first_outside(ranges, "et0_options_out_of_range");
}

} // namespace baize::climate
