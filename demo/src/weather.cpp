#include "weather.h"

#include "baize/climate/growth.h"
#include "baize/units/number.h"
#include "random.h"
#include "weather_rows.h"

#include <array>

namespace baize::demo {
namespace {

/// After 28 years dates fall on the same days of the week, leap years included.
constexpr int kShiftYears = 28;
constexpr std::size_t kColumns = 7; ///< day, month, year, tmin, tmax, rain, et0

std::string_view cut(std::string_view& text, char mark) {
  const auto end = text.find(mark);
  const std::string_view part = text.substr(0, end);
  text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
  return part;
}

climate::WeatherDay day_of(std::string_view row) {
  std::array<double, kColumns> values{};
  for (double& value : values) {
    value = units::parse_number(cut(row, '\t')).value_or(0);
  }
  climate::WeatherDay day;
  day.day = units::make_day(static_cast<int>(values[2]) + kShiftYears, static_cast<int>(values[1]),
                            static_cast<int>(values[0]))
                .value_or(units::Day{});
  day.tmin_c = values[3];
  day.tmax_c = values[4];
  day.rain_mm = values[5];
  day.et0_mm = values[6];
  return day;
}

} // namespace

climate::Weather demo_weather() {
  climate::Weather weather;
  std::string_view rows = kWeatherRows;
  while (!rows.empty()) {
    const climate::WeatherDay day = day_of(cut(rows, '\n'));
    weather.emplace(day.day, day);
  }
  return weather;
}

std::vector<double> growth_of(const climate::Weather& weather, units::Period days) {
  std::vector<double> growth;
  for (units::Day day = days.first; day <= days.last; ++day) {
    const auto found = weather.find(day);
    const double mean =
        found == weather.end() ? 0 : climate::mean_temperature_c(found->second).value_or(0);
    const double apart = (mean - climate::kCoolSeason.optimum_c) / climate::kCoolSeason.spread_c;
    growth.push_back(steady_exp(-apart * apart / 2));
  }
  return growth;
}

} // namespace baize::demo
