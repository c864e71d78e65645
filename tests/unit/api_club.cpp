#include "api_club.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace made {

namespace {

using namespace baize;

constexpr int kLastYear = 2025;

units::Day day_of(int year, int month, int day) {
  return *units::make_day(year, month, day);
}

/// Score of a roll so many days after the coring: down three points, back in a month.
int score_after(int days, int wobble) {
  const int fall = days < 0 ? 0 : std::max(0, 3 - days / 10);
  return std::clamp(9 - fall - wobble, 1, 10);
}

green::Run run(const std::string& spot, green::Direction direction, int days, int seed) {
  green::Run run{spot, direction, {}, {}, {}};
  for (int order = 1; order <= 3; ++order) {
    green::Roll roll;
    roll.order = order;
    roll.distance = units::from_metres(2.9 + 0.03 * ((seed + order) % 5));
    roll.score = score_after(days, (seed + order) % 3 == 0 ? 1 : 0);
    roll.marks = std::vector<green::Mark>{};
    if (*roll.score < 8) {
      roll.marks->push_back({green::MarkKind::chatter, 0.8});
    }
    run.rolls.push_back(roll);
  }
  return run;
}

green::Visit visit(int green, int number, units::Day day, units::Day coring) {
  green::Visit visit;
  visit.id = "v/" + std::to_string(green) + ":" + std::to_string(number);
  visit.green = std::to_string(green);
  visit.observer = number % 2 == 0 ? "ana" : "ben";
  visit.day = day;
  // Each observer goes from green to green, so that nobody is at two at once.
  visit.from = units::Minute{static_cast<std::int16_t>(360 + 10 * green + (number % 3) * 300)};
  visit.conditions.dew = "light";
  visit.conditions.hours_since_mowing = 1.5;
  visit.runs = {run("A", green::Direction::out, day - coring, number),
                run("A", green::Direction::back, day - coring, number + 1)};
  visit.source = {"rolls.csv", number + 2};
  return visit;
}

} // namespace

green::Records club(const Size& size) {
  green::Records records;
  records.club = {"c/1", "Club One", 51.5, 4.0, 10.0, {}};
  records.observers = {{"ana", "Ana", {}, {}}, {"ben", "Ben", {}, {}}};
  records.standards = {{"", {}, {}, 8, {}},
                       {"", units::MonthDay{11, 1}, units::MonthDay{2, 28}, 7, {}}};
  for (int green = 1; green <= size.greens; ++green) {
    records.greens.push_back({std::to_string(green),
                              "Green " + std::to_string(green),
                              green::Grass::cool,
                              "creeping bentgrass",
                              480.0,
                              {},
                              {{"A", 45.0, ""}},
                              {}});
  }
  for (int year = kLastYear - size.years + 1; year <= kLastYear; ++year) {
    const units::Day coring = day_of(year, 4, 7);
    records.fixtures.push_back({"f" + std::to_string(year),
                                "Summer cup",
                                {day_of(year, 7, 5), day_of(year, 7, 6)},
                                3,
                                8.5,
                                units::from_metres(3.0),
                                {}});
    for (int green = 1; green <= size.greens; ++green) {
      records.works.push_back({std::to_string(year) + "/" + std::to_string(green) + ":coring",
                               "coring",
                               coring,
                               {},
                               {},
                               {std::to_string(green)},
                               "",
                               {},
                               {{"tine_diameter", 13.0, ""}},
                               "",
                               {"works.csv", 2}});
      for (int i = 0; i < size.visits_each_year; ++i) {
        const int of_year = i * 364 / size.visits_each_year;
        const int number = (year - 2000) * 1000 + i;
        records.visits.push_back(visit(green, number, day_of(year, 1, 1) + of_year, coring));
      }
    }
  }
  return records;
}

climate::Weather weather(const Size& size) {
  climate::Weather weather;
  const units::Day first = day_of(kLastYear - size.years + 1, 1, 1);
  for (units::Day day = first; day <= day_of(kLastYear, 12, 31); ++day) {
    const auto date = units::year_month_day(day);
    if (date.month == 6 && date.day <= 3) {
      continue;
    }
    const double mean = 11 - 9 * std::cos(units::day_of_year(day) * 6.283185307179586 / 365);
    climate::WeatherDay one;
    one.day = day;
    one.tmin_c = mean - 4;
    one.tmax_c = mean + 4;
    one.rain_mm = date.day % 4 == 0 ? 6.0 : 0.0;
    weather[day] = one;
  }
  return weather;
}

} // namespace made
