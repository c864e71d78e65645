#include "baize/stats/turnbull.h"
#include "unit/special.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace {

using namespace baize::stats;
using Times = std::vector<CensoredTime>;

using special::kInfinity;
using special::kNan;

void expect_set(const SupportMass& set, double left, double right, double mass) {
  EXPECT_EQ(set.left, left);
  EXPECT_EQ(set.right, right);
  EXPECT_NEAR(set.mass, mass, 1e-9);
}

// Pencil: exact times without censoring have the share of each as their mass.
TEST(Turnbull, ExactTimesAreCounted) {
  const auto found = turnbull({{2, 2}, {5, 5}, {5, 5}, {9, 9}});
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  ASSERT_EQ(found.support.size(), 3U);
  expect_set(found.support[0], 2, 2, 0.25);
  expect_set(found.support[1], 5, 5, 0.5);
  expect_set(found.support[2], 9, 9, 0.25);
  EXPECT_NEAR(found.log_likelihood, 2 * std::log(0.25) + 2 * std::log(0.5), 1e-12);
  EXPECT_EQ(turnbull_quantile(found, 0.5)->low, 5);
}

// Pencil: (0,2] (1,3] (2,4]: innermost (1,2] and (2,3]; L = m1 (m1 + m2) m2, so
// half and half.
TEST(Turnbull, OverlappingIntervalsByPencil) {
  const auto found = turnbull({{0, 2}, {1, 3}, {2, 4}});
  ASSERT_EQ(found.support.size(), 2U);
  expect_set(found.support[0], 1, 2, 0.5);
  expect_set(found.support[1], 2, 3, 0.5);
  EXPECT_NEAR(found.log_likelihood, std::log(0.25), 1e-12);
}

// Pencil: (0,1] (0,1] (0,3] (2,inf): innermost (0,1] with m and (2,3] with 1 - m;
// L = m^2 (1 - m), so m = 2/3.
TEST(Turnbull, LeftAndRightCensoredByPencil) {
  const auto found = turnbull({{0, 1}, {0, 1}, {0, 3}, {2, kInfinity}});
  ASSERT_EQ(found.support.size(), 2U);
  expect_set(found.support[0], 0, 1, 2.0 / 3);
  expect_set(found.support[1], 2, 3, 1.0 / 3);
  EXPECT_EQ(turnbull_quantile(found, 0.9)->high, 3);
}

// (left, right] does not hold its left end: an exact 5 lies before (5, 7] and in (3, 5].
TEST(Turnbull, EndsBelongToTheRight) {
  const auto apart = turnbull({{5, 5}, {5, 7}});
  ASSERT_EQ(apart.support.size(), 2U);
  expect_set(apart.support[0], 5, 5, 0.5);
  expect_set(apart.support[1], 5, 7, 0.5);
  const auto together = turnbull({{5, 5}, {3, 5}});
  ASSERT_EQ(together.support.size(), 1U);
  expect_set(together.support[0], 5, 5, 1);
}

TEST(Turnbull, SurvivalIsARangeWithinASet) {
  const auto found = turnbull({{0, 2}, {1, 3}, {2, 4}});
  EXPECT_NEAR(turnbull_survival(found, 1)->low, 1, 1e-12);
  EXPECT_NEAR(turnbull_survival(found, 1.5)->low, 0.5, 1e-9);
  EXPECT_NEAR(turnbull_survival(found, 1.5)->high, 1, 1e-9);
  EXPECT_NEAR(turnbull_survival(found, 2)->low, 0.5, 1e-9);
  EXPECT_NEAR(turnbull_survival(found, 2)->high, 0.5, 1e-9);
  EXPECT_NEAR(turnbull_survival(found, 3)->high, 0, 1e-9);
  EXPECT_FALSE(turnbull_survival(found, kNan));
  EXPECT_FALSE(turnbull_survival(found, -1));
}

TEST(Turnbull, WhatWasNotReachedIsInfinite) {
  const auto found = turnbull({{3, 3}, {8, kInfinity}, {9, kInfinity}});
  ASSERT_TRUE(found.summary.usable);
  const auto median = turnbull_quantile(found, 0.5);
  EXPECT_EQ(median->low, 9);
  EXPECT_EQ(median->high, kInfinity);
  for (const double share : {0.0, 1.0, kNan}) {
    EXPECT_FALSE(turnbull_quantile(found, share));
  }
}

TEST(Turnbull, RefusesInOneSentence) {
  const auto code = [](const Turnbull& found) {
    EXPECT_FALSE(found.summary.usable);
    EXPECT_FALSE(turnbull_quantile(found, 0.5));
    EXPECT_FALSE(turnbull_survival(found, 1));
    return found.summary.problem.code;
  };
  EXPECT_EQ(code(turnbull({})), "too_few");
  EXPECT_EQ(code(turnbull({{4, 3}})), "time_out_of_range");
  EXPECT_EQ(code(turnbull({{-1, 3}})), "time_out_of_range");
  EXPECT_EQ(code(turnbull({{kNan, 3}})), "time_out_of_range");
  EXPECT_EQ(code(turnbull({{1, kNan}})), "time_out_of_range");
  EXPECT_EQ(code(turnbull({{kInfinity, kInfinity}})), "time_out_of_range");
  EXPECT_EQ(code(turnbull({{2, kInfinity}, {3, kInfinity}})), "all_censored");
  EXPECT_EQ(code(turnbull({{1, 2}}, {0, 1e-8})), "option_out_of_range");
  EXPECT_EQ(code(turnbull({{1, 2}}, {10, kNan})), "option_out_of_range");
  EXPECT_EQ(turnbull({{1, 2}, {4, 3}}).summary.message,
            "time 2: time is '4 to 3', but must be from 0 or more, finite, to the same time or a "
            "later one.");
}

TEST(Turnbull, ALimitOfIterationsIsNotASuccess) {
  const auto found = turnbull({{0, 1}, {0, 1}, {0, 3}, {2, kInfinity}}, {1, 1e-8});
  EXPECT_EQ(found.summary.termination, Termination::not_converged);
  EXPECT_FALSE(found.summary.usable);
}

Times drawn() {
  const auto size = *rc::gen::inRange<std::size_t>(1, 60);
  Times times;
  for (std::size_t i = 0; i < size; ++i) {
    const double left = *rc::gen::inRange(0, 30);
    const int kind = *rc::gen::inRange(0, 6);
    const double right = left + *rc::gen::inRange(1, 12);
    times.push_back({left, kind == 0 ? kInfinity : kind == 1 ? left : right});
  }
  times.push_back({3, 9});
  return times;
}

double log_likelihood(const Times& times, const std::vector<SupportMass>& support) {
  double sum = 0;
  for (const CensoredTime& time : times) {
    double inside = 0;
    for (const SupportMass& set : support) {
      const bool holds =
          set.right <= time.right &&
          (set.left >= time.left && (time.exact() || set.left > time.left || set.left < set.right));
      inside += holds ? set.mass : 0;
    }
    sum += std::log(inside);
  }
  return sum;
}

RC_GTEST_PROP(TurnbullLaws, TheMassesAreADistributionAndTheOptimum, ()) {
  const Times times = drawn();
  const auto found = turnbull(times);
  RC_ASSERT(found.summary.usable);
  RC_ASSERT(found.optimality_gap <= 1.01e-8);
  double sum = 0;
  for (const auto& set : found.support) {
    RC_ASSERT(set.mass > 0);
    sum += set.mass;
  }
  RC_ASSERT(std::fabs(sum - 1) < 1e-12);
  RC_ASSERT(std::fabs(log_likelihood(times, found.support) - found.log_likelihood) < 1e-9);
  // Moving mass from any set to any other gains nothing.
  for (std::size_t i = 0; i < found.support.size(); ++i) {
    for (std::size_t k = 0; k < found.support.size(); ++k) {
      auto other = found.support;
      const double moved = other[i].mass / 10;
      other[i].mass -= moved;
      other[k].mass += moved;
      RC_ASSERT(log_likelihood(times, other) <= found.log_likelihood + 1e-8);
    }
  }
}

RC_GTEST_PROP(TurnbullLaws, TheOrderOfTheRowsChangesNothing, ()) {
  Times times = drawn();
  const auto before = turnbull(times);
  std::reverse(times.begin(), times.end());
  const auto after = turnbull(times);
  RC_ASSERT(before.log_likelihood == after.log_likelihood);
  RC_ASSERT(before.support.size() == after.support.size());
}

RC_GTEST_PROP(TurnbullLaws, TheUnitOfTimeIsFree, ()) {
  Times times = drawn();
  const auto days = turnbull(times);
  for (CensoredTime& time : times) {
    time.left *= 24;
    time.right *= 24;
  }
  const auto hours = turnbull(times);
  RC_ASSERT(days.support.size() == hours.support.size());
  for (std::size_t i = 0; i < days.support.size(); ++i) {
    RC_ASSERT(hours.support[i].left == 24 * days.support[i].left);
    RC_ASSERT(hours.support[i].mass == days.support[i].mass);
  }
}

RC_GTEST_PROP(TurnbullLaws, AddingAConstantToAllTimesMovesTheSets, ()) {
  Times times = drawn();
  const auto before = turnbull(times);
  for (CensoredTime& time : times) {
    time.left += 7;
    time.right += 7;
  }
  const auto after = turnbull(times);
  RC_ASSERT(before.log_likelihood == after.log_likelihood);
  RC_ASSERT(after.support.front().right == before.support.front().right + 7);
}

} // namespace
