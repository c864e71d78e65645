#include "penman_monteith.h"

#include <algorithm>
#include <cmath>

namespace baize::climate {

double penman_monteith_mm(const Balance& balance, double numerator) {
  const double wind = balance.wind_2m_m_s;
  const double radiation_term = 0.408 * balance.slope * balance.available;
  const double air_term = balance.psychrometric * numerator / (balance.temperature_c + 273) * wind *
                          balance.deficit_kpa;
  return (radiation_term + air_term) / (balance.slope + balance.psychrometric * (1 + 0.34 * wind));
}

double wind_at_2m(double wind_m_s, double height_m) {
  // Exactly 2 m is left alone: the logarithm would change it in the fourth digit.
  return height_m == 2 ? wind_m_s : wind_m_s * 4.87 / std::log(67.8 * height_m - 5.42);
}

double hargreaves_mm(double tmean_c, double tmin_c, double tmax_c, double extraterrestrial) {
  return 0.0023 * (tmean_c + 17.8) * std::sqrt(std::max(tmax_c - tmin_c, 0.0)) * 0.408 *
         extraterrestrial;
}

Et0Inputs et0_inputs(const WeatherDay& day, std::optional<double> latitude_deg,
                     std::optional<double> elevation_m) {
  Et0Inputs in;
  in.day_of_year = units::day_of_year(day.day);
  in.latitude_deg = latitude_deg;
  in.elevation_m = elevation_m;
  in.tmin_c = day.tmin_c;
  in.tmax_c = day.tmax_c;
  in.dew_point_c = day.dew_point_c;
  in.humidity_max_pct = day.humidity_max_pct;
  in.humidity_min_pct = day.humidity_min_pct;
  in.solar_mj_m2 = day.solar_mj_m2;
  in.wind_m_s = day.wind_m_s;
  in.wind_height_m = day.wind_height_m;
  return in;
}

} // namespace baize::climate
