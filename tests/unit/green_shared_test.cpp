// Visits whose balls are the same.
#include "baize/green/validate.h"
#include "unit/green_samples.h"

#include <gtest/gtest.h>

#include <functional>

namespace {

using namespace baize;
using green::Records;

/// Ann and Bob at green 7, the same balls.
Records shared() {
  Records r = samples::records();
  r.observers.push_back({"bob", "", {}, {}});
  r.visits[0].shared_rolls = "s1";
  r.visits[0].source = {"visits.csv", 2};
  r.visits.push_back(r.visits[0]);
  r.visits[1].id = "v2";
  r.visits[1].observer = "bob";
  r.visits[1].source.line = 3;
  return r;
}

struct SharedCase {
  std::string code;
  std::function<void(Records&)> spoil;
};

const SharedCase kSharedCases[] = {
    {"shared_on_two_days", [](Records& r) { r.visits[1].day = samples::kToday - 1; }},
    {"shared_at_two_greens",
     [](Records& r) {
       r.visits[1].green = "8";
       r.greens[1].spots = r.greens[0].spots;
       r.greens[1].halves = r.greens[0].halves;
     }},
    {"shared_at_two_greens", [](Records& r) { r.visits[1].half = "north"; }},
    {"shared_rolls_differ", [](Records& r) { r.visits[1].runs[0].rolls.pop_back(); }},
    {"shared_rolls_differ", [](Records& r) { r.visits[1].runs.pop_back(); }},
    {"shared_rolls_differ", [](Records& r) { r.visits[1].runs[1].spot = "B"; }},
    {"shared_with_oneself",
     [](Records& r) {
       r.visits[1].observer = "ann";
       r.visits[1].from = samples::at(8, 0);
       r.visits[1].to = samples::at(8, 10);
     }},
    {"shared_without_observer", [](Records& r) { r.visits[1].observer.clear(); }},
};

TEST(SharedRolls, OfTwoObserversAreValid) {
  EXPECT_EQ(samples::codes(validate(shared(), samples::kToday)), std::vector<std::string>{});
}

TEST(SharedRolls, EachRuleIsNamedByItsCode) {
  for (const SharedCase& one : kSharedCases) {
    SCOPED_TRACE(one.code);
    Records r = shared();
    one.spoil(r);
    samples::expect_only(validate(r, samples::kToday), one.code);
  }
}

TEST(SharedRolls, AVisitAloneWaitsForTheOther) {
  Records r = shared();
  r.visits.pop_back();
  EXPECT_TRUE(validate(r, samples::kToday).empty());
}

TEST(SharedRolls, ATotalOfThreeIsThreeRolls) {
  Records r = shared();
  for (green::Run& run : r.visits[1].runs) {
    run.rolls.clear();
    run.total = 25;
    run.total_of = 3;
  }
  EXPECT_TRUE(validate(r, samples::kToday).empty());
  std::swap(r.visits[1].runs[0], r.visits[1].runs[1]); // the order of runs says nothing
  EXPECT_TRUE(validate(r, samples::kToday).empty());
}

TEST(SharedRolls, TheSentenceNamesTheOtherVisit) {
  Records r = shared();
  r.visits[1].day = samples::kToday - 1;
  const auto problems = validate(r, samples::kToday);
  ASSERT_EQ(problems.size(), 1U);
  EXPECT_EQ(units::sentence(problems[0]),
            "visits.csv line 3: shared_rolls is 's1', but must be on one day: visit v1 in "
            "visits.csv line 2 has it on " +
                units::iso(samples::kToday) + ".");
}

} // namespace
