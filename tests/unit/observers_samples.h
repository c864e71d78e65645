#pragma once

#include "baize/green/club.h"

#include <map>
#include <string>
#include <vector>

/// Shared sessions to follow with a pencil.
namespace observers_test {

using namespace baize;

inline green::Run run(green::Direction direction, const std::vector<int>& scores) {
  green::Run made;
  made.spot = "A";
  made.direction = direction;
  for (const int score : scores) {
    green::Roll roll;
    roll.order = static_cast<int>(made.rolls.size()) + 1;
    if (score > 0) { // 0: not scored
      roll.score = score;
    }
    made.rolls.push_back(roll);
  }
  return made;
}

inline green::Run total(green::Direction direction, int sum, int balls) {
  return {"A", direction, {}, sum, balls};
}

/// One observer's visit to green 7 with the same balls as others of this session.
inline green::Visit visit(const std::string& observer, units::Day day, const std::string& session,
                          const std::vector<int>& out, const std::vector<int>& back = {}) {
  green::Visit made;
  made.id = units::iso(day) + "/" + observer + "/" + session;
  made.green = "7";
  made.observer = observer;
  made.day = day;
  made.shared_rolls = session;
  made.runs.push_back(run(green::Direction::out, out));
  if (!back.empty()) {
    made.runs.push_back(run(green::Direction::back, back));
  }
  return made;
}

inline units::Day day(const std::string& iso) {
  return *units::parse_iso_day(iso);
}
inline const units::Day kToday = day("2025-12-31");

inline green::Records club(std::vector<green::Visit> visits) {
  green::Records records;
  records.greens.push_back({});
  records.greens[0].id = "7";
  for (const char* id : {"bob", "ann", "cy"}) { // not in the alphabet's order
    green::Observer observer;
    observer.id = id;
    records.observers.push_back(observer);
  }
  records.visits = std::move(visits);
  return records;
}

/// Three sessions of two balls each. Ann less Bob: 0 0, 1 1, 2 2.
inline green::Records three_sessions() {
  return club(
      {visit("ann", day("2025-04-01"), "s1", {8, 6}), visit("bob", day("2025-04-01"), "s1", {8, 6}),
       visit("ann", day("2025-05-01"), "s2", {8, 7}), visit("bob", day("2025-05-01"), "s2", {7, 6}),
       visit("ann", day("2025-07-01"), "s3", {9, 7}),
       visit("bob", day("2025-07-01"), "s3", {7, 5})});
}

} // namespace observers_test
