#include "unit/green_samples.h"
#include "unit/special.h"

#include <cmath>
#include <functional>

namespace {

using namespace baize;
using green::Visit;

using special::kInfinity;
using special::kNan;

struct VisitCase {
  const char* code;
  std::function<void(Visit&)> spoil;
};

void distance(Visit& v, double metres) {
  v.runs[0].rolls[0].distance = units::from_metres(metres);
}
void total_only(Visit& v, std::optional<int> total, std::optional<int> of) {
  v.runs[0].rolls.clear();
  v.runs[0].total = total;
  v.runs[0].total_of = of;
}
void mark_at(Visit& v, double seconds) {
  v.runs[0].rolls[0].marks = {{green::MarkKind::chatter, seconds}};
}

const VisitCase kVisitCases[] = {
    {"missing_id", [](Visit& v) { v.id.clear(); }},
    {"missing_green", [](Visit& v) { v.green.clear(); }},
    {"future_visit", [](Visit& v) { ++v.day; }},
    {"missing_from", [](Visit& v) { v.from.reset(); }},
    {"ends_before_it_begins", [](Visit& v) { v.to = samples::at(6, 59); }},
    {"not_a_time", [](Visit& v) { v.to = units::Minute{1440}; }},
    {"unknown_word", [](Visit& v) { v.conditions.dew = "some"; }},
    {"unknown_word", [](Visit& v) { v.conditions.wind = ""; }},
    {"unknown_word", [](Visit& v) { v.conditions.surface = "Dry"; }},
    {"hours_out_of_range", [](Visit& v) { v.conditions.hours_since_mowing = -0.5; }},
    {"hours_out_of_range", [](Visit& v) { v.conditions.hours_since_rolling = kNan; }},
    {"no_runs", [](Visit& v) { v.runs.clear(); }},
    {"empty_run", [](Visit& v) { v.runs[0].rolls.clear(); }},
    {"empty_roll", [](Visit& v) { v.runs[0].rolls[1] = green::Roll{2, {}, {}, {}}; }},
    {"run_twice", [](Visit& v) { v.runs[1].direction = green::Direction::out; }},
    {"order_out_of_range", [](Visit& v) { v.runs[0].rolls[0].order = 0; }},
    {"order_twice", [](Visit& v) { v.runs[0].rolls[0].order = 2; }},
    {"distance_out_of_range", [](Visit& v) { distance(v, 0); }},
    {"distance_out_of_range", [](Visit& v) { distance(v, -3); }},
    {"distance_out_of_range", [](Visit& v) { distance(v, 90); }},
    {"distance_out_of_range", [](Visit& v) { distance(v, std::nextafter(30, 31)); }},
    {"distance_out_of_range", [](Visit& v) { distance(v, kNan); }},
    {"distance_out_of_range", [](Visit& v) { distance(v, kInfinity); }},
    {"score_out_of_range", [](Visit& v) { v.runs[0].rolls[0].score = 0; }},
    {"score_out_of_range", [](Visit& v) { v.runs[0].rolls[0].score = 11; }},
    {"mark_time_out_of_range", [](Visit& v) { mark_at(v, -0.1); }},
    {"mark_time_out_of_range", [](Visit& v) { mark_at(v, 60.1); }},
    {"mark_time_out_of_range", [](Visit& v) { mark_at(v, kNan); }},
    {"too_many_marks", [](Visit& v) { v.runs[0].rolls[0].marks = std::vector<green::Mark>(100); }},
    {"missing_total_of", [](Visit& v) { total_only(v, 24, {}); }},
    {"missing_total", [](Visit& v) { v.runs[0].total_of = 3; }},
    {"total_of_out_of_range", [](Visit& v) { total_only(v, 24, 0); }},
    {"total_of_out_of_range",
     [](Visit& v) {
       v.runs[0].total = 18; // of two balls, beside three rolls
       v.runs[0].total_of = 2;
     }},
    {"total_out_of_range", [](Visit& v) { total_only(v, 2, 3); }},
    {"total_out_of_range", [](Visit& v) { total_only(v, 31, 3); }},
};

TEST(VisitRules, TheSampleIsValid) {
  EXPECT_EQ(samples::codes(validate(samples::visit(), samples::kToday)),
            std::vector<std::string>{});
}

TEST(VisitRules, EachIsNamedByItsCode) {
  for (const VisitCase& one : kVisitCases) {
    SCOPED_TRACE(one.code);
    Visit v = samples::visit();
    one.spoil(v);
    samples::expect_only(validate(v, samples::kToday), one.code);
  }
}

TEST(VisitRules, EdgesAreInside) {
  const std::function<void(Visit&)> good[] = {
      [](Visit& v) { distance(v, 9.81); }, // down a steep slope: genuine
      [](Visit& v) { distance(v, 30); },
      [](Visit& v) { distance(v, 0.01); },
      [](Visit& v) { v.runs[0].rolls[0].score = 1; },
      [](Visit& v) { mark_at(v, 0); },
      [](Visit& v) { mark_at(v, 60); },
      [](Visit& v) { total_only(v, 3, 3); },
      [](Visit& v) { total_only(v, 30, 3); },
      [](Visit& v) { v.to.reset(); },
      [](Visit& v) { v.to = v.from; },
      [](Visit& v) { v.conditions = {}; },
      [](Visit& v) { v.observer.clear(); },
      [](Visit& v) { v.runs[0].rolls[0] = {1, {}, std::vector<green::Mark>{}, {}}; },
  };
  for (const auto& change : good) {
    Visit v = samples::visit();
    change(v);
    EXPECT_EQ(samples::codes(validate(v, samples::kToday)), std::vector<std::string>{});
  }
}

TEST(VisitRules, AProblemSaysWhereItIs) {
  Visit v = samples::visit();
  v.source = {"rolls.csv", 12};
  v.runs[1].rolls[1].score = 11;
  const auto problems = validate(v, samples::kToday);
  ASSERT_EQ(problems.size(), 1U);
  EXPECT_EQ(units::sentence(problems[0]), "rolls.csv line 12 spot A back roll 2: score is '11', "
                                          "but must be a whole number from 1 to 10.");
}

TEST(VisitRules, EveryProblemIsNamedNotTheFirstOnly) {
  Visit v = samples::visit();
  distance(v, 90);
  v.runs[0].rolls[1].score = 0;
  v.conditions.dew = "wet";
  EXPECT_EQ(validate(v, samples::kToday).size(), 3U);
}

} // namespace
