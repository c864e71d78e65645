#include "ground.h"

#include "random.h"

#include <array>
#include <cmath>
#include <string_view>

namespace baize::demo {
namespace {

constexpr std::string_view kBent = "creeping bentgrass";
constexpr std::string_view kMix = "annual meadow grass and bentgrass";

/// Fast greens that are not true: much rolled, weak sward.
bool fast_only(int place) {
  return place == 5 || place == 12;
}
bool practice(int place) {
  return place == kGreens - 1;
}
bool bent(int place) {
  return place % 3 != 1;
}
bool split(int place) {
  return place == 3 || place == 10;
}

std::string ordinal(int number) {
  const bool teen = number % 100 / 10 == 1;
  const int last = teen ? 0 : number % 10;
  return std::to_string(number) + (last == 1 ? "st" : last == 2 ? "nd" : last == 3 ? "rd" : "th");
}

double rounded(double value, double step) {
  return static_cast<double>(std::lround(value / step)) * step;
}

void add_spot(green::Green& green, GreenTruth& truth, int number, Chance& chance) {
  green::Spot spot;
  spot.id = std::string(1, static_cast<char>('A' + number));
  spot.bearing_deg = 5.0 * chance.below(72);
  if (!green.halves.empty() && number < 2) {
    spot.half = green.halves[static_cast<std::size_t>(number)];
  }
  SpotTruth here;
  here.spot = spot.id;
  here.half = spot.half;
  here.level_offset = rounded(chance.between(-0.12, 0.12), 0.01);
  here.direction = rounded(chance.between(-0.15, 0.15), 0.01);
  // Spots are chosen flat; now and then nothing flat can be found.
  here.slope = rounded(
      chance.happens(0.06) ? chance.between(0.014, 0.02) : chance.between(-0.005, 0.005), 0.0001);
  green.spots.push_back(spot);
  truth.spots.push_back(here);
}

void add_green(DemoClub& club, int place) {
  Chance chance(club.truth.seed, Purpose::ground, {place});
  green::Green green;
  green.id = practice(place) ? "practice" : std::to_string(place + 1);
  green.name = practice(place) ? "Practice green" : ordinal(place + 1);
  green.grass_mix = bent(place) ? kBent : kMix;
  green.area_m2 = 10.0 * (38 + chance.below(26)) + (practice(place) ? 250 : 0);
  if (split(place)) {
    green.halves = {"front", "back"};
  }
  GreenTruth truth;
  truth.green = green.id;
  truth.seeds_in_may = !bent(place);
  truth.base_level = rounded(fast_only(place)  ? chance.between(7.75, 7.9)
                             : practice(place) ? 8.2
                             : bent(place)     ? chance.between(8.6, 8.9)
                                               : chance.between(8.45, 8.75),
                             0.01);
  truth.base_speed_m =
      rounded(fast_only(place) ? chance.between(3.08, 3.18) : chance.between(2.85, 3.05), 0.01);
  const int spots = place % 4 == 0 ? 3 : 2;
  for (int number = 0; number < spots; ++number) {
    add_spot(green, truth, number, chance);
  }
  if (place == 11) {
    truth.spots[1].defect_m = 1.7; // an old hole that settled
  }
  club.records.greens.push_back(green);
  club.truth.greens.push_back(truth);
}

void add_observer(DemoClub& club, std::string id, std::string name, units::Day since,
                  ObserverTruth truth) {
  green::Observer record;
  record.id = std::move(id);
  record.name = std::move(name);
  record.since = since;
  truth.observer = record.id;
  club.records.observers.push_back(record);
  club.truth.observers.push_back(truth);
}

units::Day day(int year, int month, int date) {
  return units::make_day(year, month, date).value_or(units::Day{});
}

void add_observers(DemoClub& club) {
  add_observer(club, "mt", "M. Torvand", day(2021, 3, 1),
               {"", 0.0, 0, 0.12, "scores, marks with times, distances"});
  add_observer(club, "ro", "R. Okesley", day(2022, 4, 4),
               {"", -0.2, 0, 0.15, "scores and marks without times; now and then no distances"});
  add_observer(club, "sb", "S. Brannock", day(2022, 10, 3),
               {"", 0.25, 0, 0.2, "writes down only the total of a run, and distances"});
  add_observer(club, "tq", "T. Quillfern", day(2024, 3, 4),
               {"", -0.05, -0.5, 0.25, "a beginner; on some days only distances"});
}

green::Standard standard(std::string green, std::optional<units::MonthDay> from,
                         std::optional<units::MonthDay> to, double score) {
  green::Standard rule;
  rule.green = std::move(green);
  rule.from = from;
  rule.to = to;
  rule.score = score;
  return rule;
}

void add_standards(DemoClub& club) {
  club.records.standards = {
      standard("", std::nullopt, std::nullopt, 8),
      standard("", units::MonthDay{11, 1}, units::MonthDay{3, 15}, 7.5),
      standard("practice", std::nullopt, std::nullopt, 7.5),
      standard("practice", units::MonthDay{11, 1}, units::MonthDay{3, 15}, 7),
  };
}

struct FixtureLine {
  std::string_view name;
  int month;
  int date; ///< the first Saturday on or after it
  int length;
  int importance;
  std::optional<double> score;
  std::optional<double> speed_m;
};

void add_fixtures(DemoClub& club) {
  static const std::array<FixtureLine, 8> kYear{{
      {"Spring medal", 4, 20, 1, 1, std::nullopt, std::nullopt},
      {"Rook salver", 5, 8, 2, 2, 8.0, 2.9},
      {"Midsummer open", 6, 26, 2, 2, 8.2, 3.0},
      {"Club championship", 7, 20, 2, 3, 8.5, 3.05},
      {"Juniors' day", 8, 4, 1, 1, std::nullopt, std::nullopt},
      {"Autumn cup", 9, 18, 2, 2, 8.2, 3.0},
      {"Captains' farewell", 10, 28, 1, 1, std::nullopt, std::nullopt},
      {"Winter foursomes", 12, 8, 1, 1, std::nullopt, std::nullopt},
  }};
  for (int year = 2023; year <= 2025; ++year) {
    for (const FixtureLine& line : kYear) {
      units::Day first = day(year, line.month, line.date);
      while ((first.since_epoch + 3) % 7 != 5) { // 1970-01-01 was a Thursday; 5 is Saturday
        ++first;
      }
      green::Fixture fixture;
      fixture.id = units::iso(first) + "/" + std::string(line.name);
      fixture.name = std::string(line.name);
      fixture.days = {first, first + (line.length - 1)};
      fixture.importance = line.importance;
      fixture.score_wanted = line.score;
      if (line.speed_m) {
        fixture.speed_wanted = units::from_metres(*line.speed_m);
      }
      club.records.fixtures.push_back(fixture);
    }
  }
}

} // namespace

double bias_on(const ObserverTruth& observer, const green::Observer& record, units::Day day) {
  double fading = observer.beginner_bias;
  for (int days = record.since ? day - *record.since : 0; days >= 60; days -= 60) {
    fading /= 2;
  }
  return observer.bias + fading;
}

void lay_ground(DemoClub& club) {
  club.records.club.id = "rookwater";
  club.records.club.name = "Rookwater Golf Club";
  club.records.club.latitude_deg = 50.8; // of the weather's station
  club.records.club.longitude_deg = 4.4;
  club.records.club.elevation_m = 100;
  for (int place = 0; place < kGreens; ++place) {
    add_green(club, place);
  }
  add_observers(club);
  add_standards(club);
  add_fixtures(club);
}

} // namespace baize::demo
