// The rules between visits whose balls are the same.
#include "checks.h"
#include "shared.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace baize::green {
namespace {

/// Spot, direction and number of balls of each run, in an order of its own.
using Balls = std::set<std::tuple<std::string, Direction, int>>;

Balls balls_of(const Visit& visit) {
  Balls balls;
  for (const Run& run : visit.runs) {
    const int rolls = static_cast<int>(run.rolls.size());
    balls.emplace(run.spot, run.direction, std::max(rolls, run.total_of.value_or(0)));
  }
  return balls;
}

std::string named(const Visit& visit) {
  const std::string place = place_of(visit.source);
  return "visit " + visit.id + (place.empty() ? "" : " in " + place);
}

/// What `visit` must share with `first`, whose balls it says were the same.
void check_pair(Checks& checks, const Visit& first, const Visit& visit) {
  if (visit.day != first.day) {
    checks.note("shared_on_two_days", "shared_rolls", visit.shared_rolls,
                "on one day: " + named(first) + " has it on " + units::iso(first.day));
  }
  if (visit.green != first.green || visit.half != first.half) {
    checks.note("shared_at_two_greens", "shared_rolls", visit.shared_rolls,
                "at one green or half: " + named(first) + " has it at green " + first.green +
                    (first.half.empty() ? "" : ", half " + first.half));
  }
  if (balls_of(visit) != balls_of(first)) {
    checks.note("shared_rolls_differ", "shared_rolls", visit.shared_rolls,
                "for the same spots, directions and numbers of rolls as " + named(first));
  }
}

} // namespace

std::vector<units::Problem> check_shared(const std::vector<Visit>& visits) {
  std::vector<units::Problem> all;
  std::map<std::string, std::vector<const Visit*>> groups;
  for (const Visit& visit : visits) {
    if (visit.shared_rolls.empty()) {
      continue;
    }
    Checks checks(visit.source);
    checks.want(!visit.observer.empty(), "shared_without_observer", "observer", "",
                "given where rolls are shared: it says whose scores these are");
    auto& group = groups[visit.shared_rolls];
    const auto same = std::find_if(group.begin(), group.end(), [&](const Visit* other) {
      return !visit.observer.empty() && other->observer == visit.observer;
    });
    if (same != group.end()) {
      checks.note("shared_with_oneself", "observer", visit.observer,
                  "another observer than in " + named(**same) +
                      ": an observer scores the same rolls once");
    }
    if (!group.empty()) {
      check_pair(checks, *group.front(), visit);
    }
    group.push_back(&visit);
    for (units::Problem& problem : checks.take()) {
      all.push_back(std::move(problem));
    }
  }
  return all;
}

} // namespace baize::green
