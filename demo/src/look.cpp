#include "look.h"

#include "ground.h"
#include "random.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace baize::demo {
namespace {

constexpr double kReleaseSpeed = 1.83;

/// How an observer goes about a visit.
struct Habit {
  bool scores = true;
  bool totals = false;
  bool marks = true;
  bool times = false;
  bool distances = true;
};

Habit habit_of(int observer, Chance& chance) {
  switch (observer) {
  case 0:
    return {.times = chance.happens(0.8)};
  case 1:
    return {.marks = chance.happens(0.7), .distances = chance.happens(0.9)};
  case 2:
    return {.totals = true, .marks = false};
  default: {
    const bool speed_only = chance.happens(0.3);
    return {.scores = !speed_only, .marks = !speed_only};
  }
  }
}

/// Time from release to a place on the line of a ball that slows evenly and
/// stops at `distance`: t = 2 d / v (1 - sqrt(1 - x / d)).
double seconds_to(double place, double distance) {
  const double share = std::min(place / distance, 1.0);
  const double seconds = 2 * distance / kReleaseSpeed * (1 - std::sqrt(1 - share));
  return static_cast<double>(std::lround(seconds * 10)) / 10;
}

/// Anywhere beyond the ramp's own hops; at a faulty place more often than not.
double mark_place(const Line& line, double distance, Chance& chance) {
  constexpr double kHops = 0.5;
  if (line.spot->defect_m && chance.happens(0.6)) {
    constexpr double kSpotLength = 3.0;
    const double from_start = line.direction == green::Direction::out
                                  ? *line.spot->defect_m
                                  : kSpotLength - *line.spot->defect_m;
    return std::min(from_start + 0.05 * chance.normal(), distance * 0.98);
  }
  return chance.between(kHops, distance * 0.98);
}

/// The kinds that the rule of the trade expects of a score: data/roll_score.tsv.
std::vector<green::MarkKind> kinds_for(int score, Chance& chance) {
  const auto other = [&] {
    return chance.happens(0.55) ? green::MarkKind::chatter : green::MarkKind::snake;
  };
  std::vector<green::MarkKind> kinds;
  if (score <= 5) {
    kinds.assign(score == 5 && chance.happens(0.6) ? 1 : 2, green::MarkKind::bobble);
  } else if (score == 6 && chance.happens(0.6)) {
    kinds.push_back(green::MarkKind::bobble);
  } else {
    const int others = score >= 9 ? 0 : score == 8 ? 1 : score == 7 ? 2 : 3;
    for (int i = 0; i < others; ++i) {
      kinds.push_back(other());
    }
  }
  return kinds;
}

std::vector<green::Mark> marks_of(const Line& line, const Ball& ball, int score, bool times,
                                  Chance& chance) {
  std::vector<green::Mark> marks;
  for (const green::MarkKind kind : kinds_for(score, chance)) {
    green::Mark mark{kind, std::nullopt};
    const double place = mark_place(line, ball.distance_m, chance);
    if (times) {
      mark.seconds = seconds_to(place, ball.distance_m);
    }
    marks.push_back(mark);
  }
  std::stable_sort(marks.begin(), marks.end(), [](const green::Mark& a, const green::Mark& b) {
    return a.kind < b.kind || (a.kind == b.kind && a.seconds < b.seconds);
  });
  return marks;
}

int whole_score(double seen) {
  const int nearest = static_cast<int>(std::lround(seen));
  return std::clamp(nearest == 10 && seen < 9.6 ? 9 : nearest, 3, 10); // 10 only if certain
}

green::Run write_down(const Line& line, const Habit& habit, double lean, Chance& chance) {
  constexpr double kEyeSd = 0.25;
  green::Run run;
  run.spot = line.spot->spot;
  run.direction = line.direction;
  int total = 0;
  for (const Ball& ball : line.balls) {
    green::Roll roll;
    roll.order = static_cast<int>(run.rolls.size()) + 1;
    if (habit.distances) {
      roll.distance = units::from_metres(ball.distance_m);
    }
    const int score = whole_score(ball.quality + lean + kEyeSd * chance.normal());
    total += score;
    if (habit.scores && !habit.totals) {
      // Now and then hand and eye disagree.
      const bool slip = chance.happens(0.008) && score < 9;
      roll.score = slip ? score + 1 : score;
      if (habit.marks) {
        roll.marks = marks_of(line, ball, score, habit.times, chance);
      }
    }
    run.rolls.push_back(roll);
  }
  if (habit.totals) {
    run.total = total;
    run.total_of = static_cast<int>(line.balls.size());
  }
  return run;
}

std::string note(Chance& chance) {
  static constexpr std::array<std::string_view, 5> kNotes{
      "hole moved since last time", "sand still showing", "pitch marks not repaired",
      "group waiting, rolled quickly", "dew brushed off before rolling"};
  return chance.happens(0.03)
             ? std::string(kNotes[static_cast<std::size_t>(chance.below(kNotes.size()))])
             : std::string();
}

} // namespace

green::Visit look(const DemoClub& club, const Stop& stop, int observer,
                  const std::vector<Line>& lines, const green::Conditions& conditions) {
  const auto who = static_cast<std::size_t>(observer);
  const ObserverTruth& truth = club.truth.observers[who];
  Chance chance(club.truth.seed, Purpose::look,
                {stop.day.since_epoch, stop.place, stop.minute, observer});
  const Habit habit = habit_of(observer, chance);
  const double lean =
      bias_on(truth, club.records.observers[who], stop.day) + truth.visit_sd * chance.normal();
  constexpr int kMinutesPerSpot = 3;
  const int spots = static_cast<int>(lines.size()) / 2;
  green::Visit visit;
  visit.green = club.truth.greens[static_cast<std::size_t>(stop.place)].green;
  visit.half = stop.half;
  visit.observer = truth.observer;
  visit.day = stop.day;
  visit.from = units::Minute{static_cast<std::int16_t>(stop.minute)};
  visit.to = units::Minute{static_cast<std::int16_t>(stop.minute + kMinutesPerSpot * spots)};
  visit.id = fmt::format("{}T{:02}{:02}/{}/{}", units::iso(visit.day), stop.minute / 60,
                         stop.minute % 60, visit.observer, visit.green);
  visit.conditions = conditions;
  for (const Line& line : lines) {
    visit.runs.push_back(write_down(line, habit, lean, chance));
  }
  visit.note = note(chance);
  return visit;
}

} // namespace baize::demo
