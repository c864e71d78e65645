#pragma once

#include "baize/green/validate.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

// Valid records to spoil one thing at a time.
namespace samples {

using namespace baize;

inline const units::Day kToday = units::make_day(2026, 6, 30).value();

inline units::Minute at(int hour, int minute) {
  return {static_cast<std::int16_t>(hour * 60 + minute)};
}

inline green::Roll roll(int order, double metres, int score) {
  return {order, units::from_metres(metres), std::vector<green::Mark>{}, score};
}

inline green::Visit visit() {
  green::Visit v;
  v.id = "v1";
  v.green = "7";
  v.observer = "ann";
  v.day = kToday;
  v.from = at(7, 0);
  v.to = at(7, 10);
  v.conditions = {4.0, 28.0, "light", "calm", "dry"};
  for (const auto direction : {green::Direction::out, green::Direction::back}) {
    green::Run run;
    run.spot = "A";
    run.direction = direction;
    run.rolls = {roll(1, 3.00, 9), roll(2, 3.05, 9), roll(3, 3.10, 10)};
    v.runs.push_back(run);
  }
  return v;
}

inline green::Work work() {
  green::Work w;
  w.id = "w1";
  w.kind = "coring";
  w.day = kToday;
  w.greens = {"7"};
  w.parameters = {{"tine_diameter", 13.0, ""}, {"diameter_measured", {}, "outside"}};
  return w;
}

inline green::Records records() {
  green::Records r;
  r.club.id = "hill";
  green::Green seven;
  seven.id = "7";
  seven.halves = {"north", "south"};
  seven.spots = {{"A", 40.0, "north"}, {"B", {}, ""}};
  green::Green eight;
  eight.id = "8";
  r.greens = {seven, eight};
  green::Observer ann;
  ann.id = "ann";
  r.observers = {ann};
  r.visits = {visit()};
  r.works = {work()};
  return r;
}

inline std::vector<std::string> codes(const std::vector<units::Problem>& problems) {
  std::vector<std::string> found;
  for (const auto& problem : problems) {
    found.push_back(problem.code);
  }
  return found;
}

/// Exactly this one problem, whose code is documented and whose sentence is whole.
inline void expect_only(const std::vector<units::Problem>& problems, const std::string& code) {
  ASSERT_EQ(codes(problems), std::vector{code});
  const auto& problem = problems.front();
  EXPECT_FALSE(problem.field.empty()) << code;
  EXPECT_FALSE(problem.rule.empty()) << code;
  std::ifstream in(BAIZE_SOURCE_DIR "/docs/howto/problems.md");
  std::ostringstream text;
  text << in.rdbuf();
  EXPECT_NE(text.str().find("`" + code + "`"), std::string::npos)
      << code << " is not explained in docs/howto/problems.md";
}

} // namespace samples
