#include "weather_rows.h"

namespace baize::store_sqlite {

namespace {

climate::WeatherDay read_day(Statement& row) {
  climate::WeatherDay day;
  day.day = row.day();
  day.tmin_c = row.maybe_real();
  day.tmax_c = row.maybe_real();
  day.tmean_c = row.maybe_real();
  day.rain_mm = row.maybe_real();
  day.rain_trace = row.integer() != 0;
  day.et0_mm = row.maybe_real();
  day.solar_mj_m2 = row.maybe_real();
  day.wind_m_s = row.maybe_real();
  day.wind_height_m = row.maybe_real();
  day.dew_point_c = row.maybe_real();
  day.humidity_max_pct = row.maybe_real();
  day.humidity_min_pct = row.maybe_real();
  return day;
}

constexpr const char* kRevisions =
    "SELECT revision, change, day, tmin_c, tmax_c, tmean_c, rain_mm, rain_trace, et0_mm, "
    "solar_mj_m2, wind_m_s, wind_height_m, dew_point_c, humidity_max_pct, humidity_min_pct "
    "FROM weather_day WHERE club = ? AND day = ? ORDER BY revision";

} // namespace

climate::Weather load_weather(Connection& db, std::int64_t club) {
  Statement& row = db.use(
      "SELECT day, tmin_c, tmax_c, tmean_c, rain_mm, rain_trace, et0_mm, solar_mj_m2, wind_m_s, "
      "wind_height_m, dew_point_c, humidity_max_pct, humidity_min_pct FROM weather_day "
      "WHERE club = ? ORDER BY day, revision");
  row.start(club);
  climate::Weather weather;
  while (row.next()) {
    const climate::WeatherDay day = read_day(row);
    weather.insert_or_assign(weather.end(), day.day, day); // the last revision stays
  }
  return weather;
}

std::vector<Revised<climate::WeatherDay>> weather_revisions(Connection& db, std::int64_t club,
                                                            units::Day day) {
  Statement& row = db.use(kRevisions);
  const std::string text = units::iso(day);
  row.start(club, text);
  std::vector<Revised<climate::WeatherDay>> all;
  while (row.next()) {
    Revised<climate::WeatherDay> one;
    one.revision = row.whole();
    one.change = row.integer();
    one.record = read_day(row);
    all.push_back(one);
  }
  return all;
}

void keep_weather_days(Writing& to, const climate::Weather& weather) {
  for (const auto& [day, given] : weather) {
    const auto before = weather_revisions(to.db(), to.club(), day);
    if (!before.empty() && before.back().record == given) {
      ++to.receipt.unchanged;
      continue;
    }
    ++(before.empty() ? to.receipt.added : to.receipt.corrected);
    to.db()
        .use("INSERT INTO weather_day (club, day, revision, change, tmin_c, tmax_c, tmean_c, "
             "rain_mm, rain_trace, et0_mm, solar_mj_m2, wind_m_s, wind_height_m, dew_point_c, "
             "humidity_max_pct, humidity_min_pct) "
             "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
        .run(to.club(), day, before.empty() ? 1 : before.back().revision + 1, to.change(),
             given.tmin_c, given.tmax_c, given.tmean_c, given.rain_mm, given.rain_trace,
             given.et0_mm, given.solar_mj_m2, given.wind_m_s, given.wind_height_m,
             given.dew_point_c, given.humidity_max_pct, given.humidity_min_pct);
  }
}

} // namespace baize::store_sqlite
