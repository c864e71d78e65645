#include "rounds.h"

#include "baize/green/roll_score.h"
#include "balls.h"
#include "calendar.h"
#include "ground.h"
#include "look.h"
#include "random.h"

#include <algorithm>
#include <array>
#include <optional>

namespace baize::demo {
namespace {

constexpr int kMorning = 6 * 60 + 45;
constexpr int kAfternoon = 15 * 60 + 30;

/// Observers by their order in the records.
enum Who { kTorvand, kOkesley, kBrannock, kQuillfern };

/// A walk over part of the course by one observer, or by two side by side who
/// score the same balls apart.
struct Round {
  int observer = 0;
  std::optional<int> beside;
  int first = 0; ///< places, both inside
  int last = kGreens - 1;
  int start = kMorning;
  double eagerness = 0.7; ///< chance that a green is measured
};

class Walker {
 public:
  explicit Walker(DemoClub& club) : club_(club) {
    for (const green::Work& work : club.records.works) {
      if (green::class_of(work) == green::WorkClass::closing) {
        closures_.push_back(work);
      } else if (green::class_of(work) == green::WorkClass::disruptive) {
        disruptive_.push_back(work);
      }
    }
  }

  void walk_day(units::Day day) {
    if (closed(closures_, day)) {
      return;
    }
    for (const Round& round : rounds_on(day)) {
      walk(round, day);
    }
  }

 private:
  bool eve(units::Day day) const {
    return std::any_of(club_.records.fixtures.begin(), club_.records.fixtures.end(),
                       [&](const green::Fixture& fixture) {
                         return fixture.days.first == day + 1 && fixture.importance > 1;
                       });
  }

  std::vector<Round> season_rounds(units::Day day, int week) const {
    const bool swapped = week % 2 == 1;
    const auto nine = [](bool back) { return back ? std::pair(9, kGreens - 1) : std::pair(0, 8); };
    const auto [first, last] = nine(swapped);
    const auto [other_first, other_last] = nine(!swapped);
    if (weekday(day) == 1) {
      if (week % 4 == 0) {
        return {{kTorvand, kBrannock, first, last, kMorning, 0.9}};
      }
      return {{kTorvand, std::nullopt, first, last, kMorning, 0.85},
              {kBrannock, std::nullopt, other_first, other_last, kMorning, 0.85}};
    }
    if (weekday(day) == 3) {
      const int start = week % 3 == 1 ? kAfternoon : kMorning;
      const bool joined = club_.records.observers[kQuillfern].since <= day;
      if (joined && week % 4 == 2) {
        return {{kOkesley, kQuillfern, first, last, start, 0.85}};
      }
      return {{kOkesley, std::nullopt, first, last, start, 0.8},
              {joined ? kQuillfern : kTorvand, std::nullopt, other_first, other_last, start, 0.8}};
    }
    if (weekday(day) == 5) {
      return {{week % 3 == 0 ? kOkesley : kTorvand, std::nullopt, 0, kGreens - 1, kMorning, 0.5}};
    }
    return {};
  }

  std::vector<Round> rounds_on(units::Day day) const {
    const int week = (day - club_.truth.days.first) / 7;
    Chance chance(club_.truth.seed, Purpose::round, {day.since_epoch});
    if (eve(day)) {
      return {{kTorvand, std::nullopt, 0, 8, kMorning, 0.95},
              {kOkesley, std::nullopt, 9, kGreens - 1, kMorning, 0.95}};
    }
    if (chance.happens(0.08)) { // short of hands
      return {};
    }
    if (in_season(day)) {
      return season_rounds(day, week);
    }
    const bool thin = month(day) == 12 || month(day) <= 2;
    if (weekday(day) != 1 || (thin && week % 2 == 1)) {
      return {};
    }
    const double eagerness = thin ? 0.5 : 0.65;
    return {{kTorvand, std::nullopt, 0, 8, kMorning + 120, eagerness},
            {kBrannock, std::nullopt, 9, kGreens - 1, kMorning + 120, eagerness}};
  }

  bool just_worked(int place, units::Day day) const {
    const std::string& green = club_.truth.greens[static_cast<std::size_t>(place)].green;
    return std::any_of(disruptive_.begin(), disruptive_.end(), [&](const green::Work& work) {
      return work.day <= day && day - work.day < 10 && green::touches(work, green);
    });
  }

  bool measured(const Round& round, int place, units::Day day, Chance& chance) const {
    double eagerness = round.eagerness;
    if (eagerness < 0.95) {
      const auto& last = last_score_[static_cast<std::size_t>(place)];
      eagerness *= last && *last >= 8.5 ? 0.75 : 1;
      eagerness *= just_worked(place, day) ? 0.55 : 1;
    }
    return chance.happens(eagerness * (place == kGreens - 1 ? 0.5 : 1));
  }

  /// While halves of a green differ, some visits go to one half only.
  std::string half_of(int place, units::Day day, Chance& chance) const {
    const auto& halves = club_.records.greens[static_cast<std::size_t>(place)].halves;
    const bool apart =
        units::year_month_day(day).year == 2025 && month(day) >= 4 && month(day) <= 6;
    if (halves.empty() || !apart || !chance.happens(0.4)) {
      return {};
    }
    return halves[static_cast<std::size_t>(chance.below(static_cast<int>(halves.size())))];
  }

  void walk(const Round& round, units::Day day) {
    Chance chance(club_.truth.seed, Purpose::round, {day.since_epoch, round.observer, round.first});
    int minute = round.start + 5 * chance.below(3);
    for (int place = round.first; place <= round.last; ++place) {
      const bool stays = measured(round, place, day, chance);
      const std::string half = half_of(place, day, chance);
      const int walk_on = 2 + chance.below(2);
      if (stays) {
        minute = visit(round, {place, day, minute, half});
      }
      minute += walk_on;
    }
  }

  int visit(const Round& round, const Stop& stop) {
    const green::Conditions conditions = conditions_at(club_, stop);
    const std::vector<Line> lines = roll_balls(club_, stop, conditions);
    auto& visits = club_.records.visits;
    visits.push_back(look(club_, stop, round.observer, lines, conditions));
    if (const auto sum = green::score_sum(visits.back().runs)) {
      last_score_[static_cast<std::size_t>(stop.place)] = sum->mean();
    }
    const int ends = visits.back().to->of_day;
    if (round.beside) {
      const std::string shared = visits.back().id;
      visits.back().shared_rolls = shared;
      visits.push_back(look(club_, stop, *round.beside, lines, conditions));
      visits.back().shared_rolls = shared;
    }
    return ends;
  }

  DemoClub& club_;
  std::vector<green::Work> closures_;
  std::vector<green::Work> disruptive_;
  std::array<std::optional<double>, kGreens> last_score_;
};

} // namespace

void walk_rounds(DemoClub& club) {
  Walker walker(club);
  for (units::Day day = club.truth.days.first; day <= club.truth.days.last; ++day) {
    walker.walk_day(day);
  }
}

} // namespace baize::demo
