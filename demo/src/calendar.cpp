#include "calendar.h"

#include "baize/units/number.h"
#include "disruptive.h"
#include "random.h"

#include <algorithm>
#include <string>

namespace baize::demo {
namespace {

std::vector<std::string> words(std::string_view text) {
  std::vector<std::string> all;
  while (!text.empty()) {
    const auto end = text.find(' ');
    all.emplace_back(text.substr(0, end));
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
  }
  return all;
}

/// "tine_diameter=13 cores=removed": numbers where they read as numbers, else words.
std::vector<green::Parameter> parameters(std::string_view text) {
  std::vector<green::Parameter> all;
  for (const std::string& pair : words(text)) {
    const auto equals = pair.find('=');
    green::Parameter parameter;
    parameter.name = pair.substr(0, equals);
    const std::string value = pair.substr(equals + 1);
    if (const auto number = units::parse_number(value)) {
      parameter.number = *number;
    } else {
      parameter.word = value;
    }
    all.push_back(parameter);
  }
  return all;
}

green::Work& add_work(DemoClub& club, units::Day day, std::string_view kind, std::string_view with,
                      std::string_view greens, int hour) {
  green::Work work;
  work.day = day;
  work.kind = std::string(kind);
  work.id = units::iso(day) + "/" + work.kind;
  work.at = units::Minute{static_cast<std::int16_t>(60 * hour)};
  work.parameters = parameters(with);
  if (greens != "all") {
    work.greens = words(greens);
  }
  club.records.works.push_back(work);
  return club.records.works.back();
}

std::size_t place_of(const Truth& truth, units::Day day) {
  return static_cast<std::size_t>(day - truth.days.first);
}

/// The loss by day: full on the work's own day, then less by what grew.
std::vector<double> decay(const Truth& truth, units::Day day, double depth, double rate) {
  std::vector<double> loss;
  double left = depth;
  for (std::size_t i = place_of(truth, day); i < truth.growth.size() && left >= 0.01; ++i) {
    loss.push_back(left);
    left -= rate * truth.growth[std::min(i + 1, truth.growth.size() - 1)] * left;
  }
  return loss;
}

units::Day day_of(const DisruptiveLine& line) {
  return units::make_day(line.year, line.month, line.date).value_or(units::Day{});
}

void hurt(DemoClub& club, const green::Work& work, const DisruptiveLine& line, int number) {
  for (int place = 0; place < static_cast<int>(club.truth.greens.size()); ++place) {
    const std::string& green = club.truth.greens[static_cast<std::size_t>(place)].green;
    if (!green::touches(work, green)) {
      continue;
    }
    Chance chance(club.truth.seed, Purpose::work, {number, place});
    WorkTruth truth;
    truth.work = work.id;
    truth.green = green;
    truth.half = work.half;
    truth.day = work.day;
    truth.depth = line.depth * std::clamp(1 + 0.15 * chance.normal(), 0.6, 1.4);
    truth.rate = line.rate * std::clamp(1 + 0.10 * chance.normal(), 0.7, 1.3);
    truth.loss = decay(club.truth, work.day, truth.depth, truth.rate);
    club.truth.works.push_back(truth);
  }
}

void add_disruptive(DemoClub& club) {
  int number = 0;
  for (const DisruptiveLine& line : kDisruptive) {
    const units::Day day = day_of(line);
    green::Work& work = add_work(club, day, line.kind, line.parameters, line.greens, 8);
    work.half = std::string(line.half);
    if (line.say_disruptive) {
      work.disruptive = true;
    }
    hurt(club, green::Work(work), line, number++);
  }
}

void add_routine(DemoClub& club) {
  const Truth& truth = club.truth;
  for (units::Day day = truth.days.first; day <= truth.days.last; ++day) {
    const int week = (day - truth.days.first) / 7;
    const int today = weekday(day);
    if (!in_season(day)) {
      if (today == 0 && week % 6 == 0) {
        add_work(club, day, "needle_tining", "tine_diameter=8 depth=120", "all", 9);
      }
      continue;
    }
    if (today == 1 || today == 4) {
      add_work(club, day, "rolling", "passes=1 roller_mass=320", "all", 6);
    }
    const bool heavy = std::any_of(kDisruptive.begin(), kDisruptive.end(), [&](const auto& line) {
      return line.kind == "topdressing" && day_of(line) == day;
    });
    if (today == 0 && week % 3 == 0 && !heavy) {
      add_work(club, day, "topdressing", "sand=0.5 moisture=dry worked_in=brushed", "all", 10);
    }
    if (today == 2 && week % 2 == 0) {
      add_work(club, day, "grooming", "depth=0.5 blade_spacing=6", "all", 7);
    }
    if (today == 3 && week % 4 == 1) {
      add_work(club, day, "feeding", "nitrogen=8 potassium=6 iron=1 form=liquid", "all", 11);
    }
    if (today == 3 && week % 4 == 3 && month(day) >= 5 && month(day) <= 9) {
      add_work(club, day, "growth_regulator", "rate=0.4 substance=trinexapac-ethyl", "all", 11);
    }
  }
}

/// Why the greens are shut on a day, from its weather; empty: they are open.
std::string_view shut_by(const climate::WeatherDay& day) {
  const double tmin = day.tmin_c.value_or(0);
  const double tmax = day.tmax_c.value_or(0);
  const double rain = day.rain_mm.value_or(0);
  if (tmax < 1.5 && rain > 1) {
    return "snow";
  }
  if (tmin < -3 && tmax < 3) {
    return "frost";
  }
  return rain > 32 ? "flood" : "";
}

void add_closures(DemoClub& club) {
  const Truth& truth = club.truth;
  std::string_view last;
  for (units::Day day = truth.days.first; day <= truth.days.last; ++day) {
    const auto weather = club.weather.find(day);
    const std::string_view why = weather == club.weather.end() ? "" : shut_by(weather->second);
    if (!why.empty() && why == last) {
      club.records.works.back().until = day;
    } else if (!why.empty()) {
      green::Work& work = add_work(club, day, "closed", "reason=" + std::string(why), "all", 0);
      work.at.reset();
      work.until = day;
    }
    last = why;
  }
}

} // namespace

int weekday(units::Day day) {
  return ((day.since_epoch + 3) % 7 + 7) % 7;
}
int month(units::Day day) {
  return units::year_month_day(day).month;
}
bool in_season(units::Day day) {
  return month(day) >= 4 && month(day) <= 10;
}

bool closed(const std::vector<green::Work>& closures, units::Day day) {
  return std::any_of(closures.begin(), closures.end(), [&](const green::Work& work) {
    return work.day <= day && day <= work.until.value_or(work.day);
  });
}

void do_works(DemoClub& club) {
  add_disruptive(club);
  add_routine(club);
  add_closures(club);
  std::stable_sort(club.records.works.begin(), club.records.works.end(),
                   [](const green::Work& a, const green::Work& b) { return a.day < b.day; });
}

} // namespace baize::demo
