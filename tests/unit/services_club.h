#pragma once

#include "baize/climate/weather.h"
#include "baize/green/club.h"

#include <optional>
#include <string>

/// A club small enough to follow with a pencil.
namespace baize::testing {

inline units::Day day(int year, int month, int date) {
  return *units::make_day(year, month, date);
}

inline green::Records club_of(int greens) {
  green::Records records;
  records.club.id = "test";
  records.club.name = "Test club";
  for (int i = 1; i <= greens; ++i) {
    green::Green green;
    green.id = std::to_string(i);
    green.name = "Green " + green.id;
    green.spots.push_back({"A", std::nullopt, {}});
    records.greens.push_back(green);
  }
  green::Observer observer;
  observer.id = "ob";
  records.observers.push_back(observer);
  return records;
}

/// Ten balls out with this total, so the score is in tenths; and where a speed is
/// given three balls out and back at it.
inline green::Visit& add_visit(green::Records& records, const std::string& green, units::Day day,
                               std::optional<int> tenths,
                               std::optional<double> speed_m = std::nullopt) {
  green::Visit visit;
  visit.id = units::iso(day) + "/" + green;
  visit.green = green;
  visit.observer = "ob";
  visit.day = day;
  visit.from = units::Minute{600};
  if (tenths) {
    green::Run run{"A", green::Direction::out, {}, tenths, 10};
    visit.runs.push_back(run);
  }
  if (speed_m) {
    for (const auto direction : {green::Direction::out, green::Direction::back}) {
      green::Run run{"A", direction, {}, std::nullopt, std::nullopt};
      for (int order = 1; order <= 3; ++order) {
        run.rolls.push_back({order, units::from_metres(*speed_m), std::nullopt, std::nullopt});
      }
      visit.runs.push_back(run);
    }
  }
  records.visits.push_back(visit);
  return records.visits.back();
}

inline green::Work& add_work(green::Records& records, const std::string& kind, units::Day day,
                             std::vector<std::string> greens = {}) {
  green::Work work;
  work.id = units::iso(day) + "/" + kind;
  work.kind = kind;
  work.day = day;
  work.at = units::Minute{420};
  work.greens = std::move(greens);
  records.works.push_back(work);
  return records.works.back();
}

/// Every day at one temperature.
inline climate::Weather steady_weather(units::Period days, double celsius) {
  climate::Weather weather;
  for (units::Day one = days.first; one <= days.last; ++one) {
    climate::WeatherDay today;
    today.day = one;
    today.tmin_c = celsius - 5;
    today.tmax_c = celsius + 5;
    weather.emplace(one, today);
  }
  return weather;
}

} // namespace baize::testing
