#include "baize/climate/humidity.h"
#include "penman_monteith.h"

#include <algorithm>

namespace baize::climate {

namespace {

void take_air(const Et0Inputs& in, Et0& out) {
  // The equation's own mean, also where the station gives another (FAO-56 ch. 3).
  out.tmean_c = (*in.tmin_c + *in.tmax_c) / 2;
  if (!in.elevation_m) {
    out.replaced.push_back({"elevation_m", 0,
                            "no elevation was given: sea level is taken (no FAO-56 rule; 300 m "
                            "change the result by about 1 %)"});
  }
  out.pressure_kpa = atmospheric_pressure_kpa(in.elevation_m.value_or(0));
  out.psychrometric = psychrometric_constant(out.pressure_kpa);
  out.slope = vapour_pressure_slope(out.tmean_c);
  out.saturation_kpa = mean_saturation_vapour_pressure_kpa(*in.tmin_c, *in.tmax_c);
}

void take_moisture(const Et0Inputs& in, const Et0Options& options, Et0& out) {
  const auto take = [&out](MoistureFrom from, double kpa) {
    out.moisture_from = from;
    out.vapour_pressure_kpa = std::max(kpa, 0.0); // a psychrometer's formula can fall below
  };
  if (in.vapour_pressure_kpa) {
    take(MoistureFrom::vapour_pressure, *in.vapour_pressure_kpa);
  } else if (in.dew_point_c) {
    take(MoistureFrom::dew_point, vapour_pressure_from_dew_point_kpa(*in.dew_point_c));
  } else if (in.dry_bulb_c && in.wet_bulb_c) {
    take(MoistureFrom::psychrometer,
         vapour_pressure_from_psychrometer_kpa(*in.dry_bulb_c, *in.wet_bulb_c, out.pressure_kpa,
                                               options.psychrometer));
  } else if (in.humidity_max_pct && in.humidity_min_pct) {
    take(MoistureFrom::humidity_max_and_min,
         vapour_pressure_from_humidity_kpa(*in.tmin_c, *in.tmax_c, *in.humidity_max_pct,
                                           *in.humidity_min_pct));
  } else if (in.humidity_max_pct) {
    take(MoistureFrom::humidity_max,
         vapour_pressure_from_humidity_max_kpa(*in.tmin_c, *in.humidity_max_pct));
  } else if (in.humidity_mean_pct) {
    take(MoistureFrom::humidity_mean,
         vapour_pressure_from_humidity_mean_kpa(*in.tmin_c, *in.tmax_c, *in.humidity_mean_pct));
  } else {
    const double dew_point = *in.tmin_c - options.dew_point_below_tmin_c;
    take(MoistureFrom::tmin, vapour_pressure_from_dew_point_kpa(dew_point));
    out.replaced.push_back({"dew_point_c", dew_point,
                            options.dew_point_below_tmin_c > 0
                                ? "no moisture was given: the dew point is taken below tmin by the "
                                  "dryness that was set (FAO-56 eq. 48)"
                                : "no moisture was given: the dew point is taken as tmin (FAO-56 "
                                  "eq. 48)"});
  }
}

void take_sun(const Et0Inputs& in, const Et0Options& options, Et0& out) {
  out.extraterrestrial = extraterrestrial_radiation(*in.latitude_deg, in.day_of_year);
  out.daylight_h = daylight_hours(*in.latitude_deg, in.day_of_year);
  out.clear_sky = clear_sky_radiation(in.elevation_m.value_or(0), out.extraterrestrial);
  if (in.solar_mj_m2) {
    out.solar_from = SolarFrom::measured;
    out.solar = *in.solar_mj_m2;
  } else if (in.sunshine_h) {
    out.solar_from = SolarFrom::sunshine;
    out.solar =
        solar_from_sunshine(*in.sunshine_h, out.daylight_h, out.extraterrestrial, options.angstrom);
  } else {
    out.solar_from = SolarFrom::temperature_range;
    // A wide range under eq. 50 can pass what a clear sky lets through.
    out.solar = std::min(out.clear_sky,
                         solar_from_temperature_range(*in.tmin_c, *in.tmax_c, out.extraterrestrial,
                                                      options.temperature_range_coefficient));
    out.replaced.push_back({"solar_mj_m2", out.solar,
                            "no radiation and no sunshine was given: it is taken from the range of "
                            "temperature (FAO-56 eq. 50), not above a clear sky"});
  }
}

void take_wind(const Et0Inputs& in, const Et0Options& options, Et0& out) {
  if (!in.wind_m_s) {
    out.wind_2m_m_s = options.usual_wind_m_s;
    out.replaced.push_back({"wind_m_s", out.wind_2m_m_s,
                            "no wind was given: the usual wind at 2 m is taken (FAO-56 ch. 3: 2 "
                            "m/s)"});
    return;
  }
  if (!in.wind_height_m) {
    out.replaced.push_back(
        {"wind_height_m", 2, "no height of the wind was given: 2 m is taken (no FAO-56 rule)"});
  }
  out.wind_2m_m_s = in.wind_height_m ? wind_at_2m(*in.wind_m_s, *in.wind_height_m) : *in.wind_m_s;
  if (out.wind_2m_m_s < options.least_wind_m_s) {
    out.wind_2m_m_s = options.least_wind_m_s;
    out.replaced.push_back({"wind_m_s", out.wind_2m_m_s,
                            "the wind was lower than the equation is made for: the least wind is "
                            "taken (FAO-56 ch. 3: about 0.5 m/s)"});
  }
}

void take_balance(const Et0Inputs& in, const Et0Options& options, Et0& out) {
  const double clouds = limited_cloud_ratio(out.solar, out.clear_sky, options.clouds);
  out.net_shortwave = net_shortwave(out.solar);
  out.net_longwave = net_longwave(*in.tmin_c, *in.tmax_c, out.vapour_pressure_kpa, clouds);
  out.net = net_radiation(out.net_shortwave, out.net_longwave);
  out.soil_heat = in.soil_heat_mj_m2.value_or(0);
}

} // namespace

units::Result<Et0> reference_et0(const Et0Inputs& inputs, const Et0Options& options) {
  if (auto found = options.problem()) {
    return units::Refusal(*found);
  }
  if (auto found = input_problem(inputs)) {
    return units::Refusal(*found);
  }
  Et0 out;
  take_air(inputs, out);
  take_moisture(inputs, options, out);
  take_sun(inputs, options, out);
  if (out.extraterrestrial <= 0) {
    return units::Refusal(units::Problem{"no_daylight", "latitude_deg", "polar night",
                                         "a place where the sun rises on that day", ""});
  }
  take_wind(inputs, options, out);
  take_balance(inputs, options, out);
  const Balance balance{out.net - out.soil_heat, out.slope,
                        out.psychrometric,       out.tmean_c,
                        out.wind_2m_m_s,         out.saturation_kpa - out.vapour_pressure_kpa};
  out.et0_mm = penman_monteith_mm(balance, 900);
  return out;
}

} // namespace baize::climate
