#pragma once

#include "baize/green/club.h"

#include <string>
#include <vector>

namespace baize::testing {

inline units::Day day(const std::string& iso) {
  return *units::parse_iso_day(iso);
}
inline units::Minute minute(const std::string& iso) {
  return *units::parse_minute(iso);
}

inline green::Run run(const std::string& spot, const std::vector<int>& scores) {
  green::Run made;
  made.spot = spot;
  for (const int score : scores) {
    green::Roll roll;
    roll.order = static_cast<int>(made.rolls.size()) + 1;
    roll.score = score;
    made.rolls.push_back(roll);
  }
  return made;
}

/// A visit to green 7 with one run at spot "main".
inline green::Visit visit(const std::string& id, const std::string& on,
                          const std::vector<int>& scores) {
  green::Visit made;
  made.id = id;
  made.green = "7";
  made.observer = "ann";
  made.day = day(on);
  made.runs.push_back(run("main", scores));
  return made;
}

inline green::Work work(const std::string& id, const std::string& kind, const std::string& on) {
  green::Work made;
  made.id = id;
  made.kind = kind;
  made.day = day(on);
  made.greens = {"7"};
  return made;
}

/// A club with green 7, halves north and south.
inline green::Records records() {
  green::Records made;
  green::Green seven;
  seven.id = "7";
  seven.halves = {"north", "south"};
  seven.spots = {{"n1", {}, "north"}, {"s1", {}, "south"}, {"main", {}, ""}};
  made.greens.push_back(seven);
  return made;
}

} // namespace baize::testing
