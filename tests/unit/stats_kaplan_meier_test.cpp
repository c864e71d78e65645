#include "baize/stats/kaplan_meier.h"
#include "baize/stats/turnbull.h"
#include "unit/special.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace {

using namespace baize::stats;
using FollowUps = std::vector<FollowUp>;

using special::kNan;

// Pencil: 1 ended, 2 open, 3 ended, 4 ended: 3/4, then 3/4 1/2 = 3/8, then 0.
// Greenwood at 3: (3/8)^2 (1/(4 3) + 1/(2 1)).
TEST(KaplanMeier, ByPencil) {
  const auto found = kaplan_meier({{3, true}, {1, true}, {2, false}, {4, true}});
  ASSERT_TRUE(found.summary.usable);
  ASSERT_EQ(found.steps.size(), 3U);
  EXPECT_DOUBLE_EQ(found.steps[0].survival, 0.75);
  EXPECT_EQ(found.steps[1].at_risk, 2);
  EXPECT_DOUBLE_EQ(found.steps[1].survival, 0.375);
  EXPECT_DOUBLE_EQ(found.steps[1].standard_error, 0.375 * std::sqrt(1.0 / 12 + 0.5));
  EXPECT_EQ(found.steps[2].survival, 0);
  EXPECT_FALSE(found.steps[2].confidence);
  EXPECT_EQ(found.median, 3);
}

// Pencil: S = 1/2 of 2, Greenwood 1/2: half width 1.959964 sqrt(1/2) / log 2 on
// the scale log(-log S).
TEST(KaplanMeier, TheIntervalByPencil) {
  const auto found = kaplan_meier({{1, true}, {2, false}});
  const double wide = 1.959963984540054 * std::sqrt(0.5) / std::log(2);
  EXPECT_NEAR(found.steps[0].confidence->low, std::pow(0.5, std::exp(wide)), 1e-12);
  EXPECT_NEAR(found.steps[0].confidence->high, std::pow(0.5, std::exp(-wide)), 1e-12);
  EXPECT_EQ(found.median, 1);
}

TEST(KaplanMeier, OneOpenAtTheSameTimeStillCounts) {
  const auto found = kaplan_meier({{5, true}, {5, false}});
  EXPECT_EQ(found.steps[0].at_risk, 2);
  EXPECT_DOUBLE_EQ(found.steps[0].survival, 0.5);
}

TEST(KaplanMeier, AMedianNotReachedIsAbsent) {
  EXPECT_FALSE(kaplan_meier({{1, true}, {2, false}, {3, false}}).median);
}

TEST(KaplanMeier, RefusesInOneSentence) {
  const auto code = [](const FollowUps& times, const ConfidenceOptions& options = {}) {
    const auto found = kaplan_meier(times, options);
    EXPECT_FALSE(found.summary.usable);
    return found.summary.problem.code;
  };
  EXPECT_EQ(code({}), "too_few");
  EXPECT_EQ(code({{kNan, true}}), "time_out_of_range");
  EXPECT_EQ(code({{-1, true}}), "time_out_of_range");
  EXPECT_EQ(code({{1, false}, {2, false}}), "all_censored");
  EXPECT_EQ(code({{1, true}}, {1}), "option_out_of_range");
  EXPECT_EQ(kaplan_meier({{1, true}, {-2, true}}).summary.message,
            "times 2: time is '-2', but must be finite, 0 or more.");
}

// Pencil: first group 1 and 3, second 2 and 4, all ended. Expected of the first
// 2/4 + 1/3 + 1/2 + 0, variance 1/4 + 2/9 + 1/4 + 0.
TEST(LogRank, ByPencil) {
  const auto found = log_rank({{1, true}, {3, true}}, {{2, true}, {4, true}});
  ASSERT_TRUE(found.summary.usable);
  EXPECT_EQ(found.observed_first, 2);
  EXPECT_NEAR(found.expected_first, 4.0 / 3, 1e-15);
  EXPECT_NEAR(found.variance, 13.0 / 18, 1e-15);
  EXPECT_NEAR(found.chi_squared, 8.0 / 13, 1e-14);
}

TEST(LogRank, Refuses) {
  EXPECT_EQ(log_rank({}, {{1, true}}).summary.problem.code, "too_few");
  EXPECT_EQ(log_rank({{1, true}}, {{kNan, true}}).summary.problem.code, "time_out_of_range");
  EXPECT_EQ(log_rank({{1, false}}, {{1, false}}).summary.problem.code, "all_censored");
  EXPECT_EQ(log_rank({{1, false}}, {{2, true}}).summary.problem.code, "all_censored");
}

FollowUps drawn_follow_ups() {
  const auto size = *rc::gen::inRange<std::size_t>(2, 40);
  FollowUps times{{4, true}};
  for (std::size_t i = 0; i < size; ++i) {
    times.push_back({static_cast<double>(*rc::gen::inRange(1, 30)), *rc::gen::inRange(0, 3) > 0});
  }
  return times;
}

RC_GTEST_PROP(KaplanMeierLaws, ItIsTurnbullsEstimateOfTheSameTimes, ()) {
  const FollowUps times = drawn_follow_ups();
  std::vector<CensoredTime> intervals;
  for (const FollowUp& one : times) {
    intervals.push_back({one.time, one.ended ? one.time : std::numeric_limits<double>::infinity()});
  }
  const auto by_steps = kaplan_meier(times);
  const auto by_masses = turnbull(intervals);
  RC_ASSERT(by_masses.summary.usable);
  for (const SurvivalStep& step : by_steps.steps) {
    RC_ASSERT(std::fabs(turnbull_survival(by_masses, step.time)->low - step.survival) < 1e-6);
  }
}

RC_GTEST_PROP(KaplanMeierLaws, OrderAndUnitOfTimeChangeNothing, ()) {
  FollowUps times = drawn_follow_ups();
  const auto before = kaplan_meier(times);
  std::reverse(times.begin(), times.end());
  for (FollowUp& one : times) {
    one.time *= 24;
  }
  const auto after = kaplan_meier(times);
  RC_ASSERT(before.steps.size() == after.steps.size());
  for (std::size_t i = 0; i < before.steps.size(); ++i) {
    RC_ASSERT(before.steps[i].survival == after.steps[i].survival);
    RC_ASSERT(before.steps[i].standard_error == after.steps[i].standard_error);
  }
}

RC_GTEST_PROP(LogRankLaws, SwappingTheGroupsChangesNothing, ()) {
  const FollowUps a = drawn_follow_ups();
  const FollowUps b = drawn_follow_ups();
  const auto ab = log_rank(a, b);
  const auto ba = log_rank(b, a);
  RC_ASSERT(ab.summary.usable == ba.summary.usable);
  RC_ASSERT(std::fabs(ab.chi_squared - ba.chi_squared) <= 1e-9 * (1 + ab.chi_squared));
}

} // namespace
