#include "baize/trials/ordinal.h"

#include <gtest/gtest.h>

#include <cmath>

namespace baize::trials {
namespace {

/// Plots of two treatments, "a" first, without blocks.
Plan plan_of(int each) {
  Plan plan;
  plan.trial = "ranks";
  plan.layout = Layout::completely_randomised;
  for (int i = 0; i < 2 * each; ++i) {
    Plot plot;
    plot.number = i + 1;
    plot.treatment = i < each ? "a" : "b";
    plan.plots.push_back(plot);
  }
  return plan;
}

Values values_of(const std::vector<std::vector<std::optional<double>>>& by_day) {
  Values values;
  values.quantity = "score";
  values.by_day = by_day;
  for (std::size_t d = 0; d < by_day.size(); ++d) {
    values.days.push_back(units::Day{20000} + static_cast<int>(7 * d));
  }
  return values;
}

// R 4.2.2, MASS 7.3 polr(factor(score) ~ treatment): coefficient 2.839352470482 with
// standard error 1.37991057677; interval and p by R's qt and pt on 10 degrees.
TEST(TrialOrdinal, OneDayIsPlainOrdinalRegression) {
  const auto found = analyse_ordinal(plan_of(6), values_of({{8, 7, 8, 9, 6, 7, 6, 7, 5, 6, 7, 6}}));
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  ASSERT_EQ(found.pairs.size(), 1U);
  const OddsRatio& pair = found.pairs.front();
  EXPECT_EQ(pair.first, "a");
  EXPECT_NEAR(std::log(pair.odds), 2.839352470482, 1e-5);
  EXPECT_NEAR(pair.interval.low, 0.790349601482, 1e-5);
  EXPECT_NEAR(pair.interval.high / 370.178321246, 1, 1e-5);
  EXPECT_NEAR(pair.p, 0.0666507113454, 1e-6);
  EXPECT_EQ(found.df, 10);
  EXPECT_EQ(found.plots, 12);
}

// Scores are ranks: what is above 8 may lie anywhere above it.
TEST(TrialOrdinal, OnlyTheOrderCounts) {
  const auto near = analyse_ordinal(plan_of(4), values_of({{8, 7, 8, 6, 5, 6, 7, 5}}));
  const auto far = analyse_ordinal(plan_of(4), values_of({{10, 7, 10, 6, 2, 6, 7, 2}}));
  ASSERT_TRUE(near.summary.usable && far.summary.usable);
  EXPECT_NEAR(near.pairs[0].odds, far.pairs[0].odds, 1e-9);
}

// Six looks at twelve plots are no 72 plots.
TEST(TrialOrdinal, PlotsOfSeveralDaysAreNotSeveralPlots) {
  const std::vector<std::optional<double>> day{8, 7, 8, 9, 6, 7, 6, 7, 5, 6, 7, 6};
  const auto one = analyse_ordinal(plan_of(6), values_of({day}));
  const auto six = analyse_ordinal(plan_of(6), values_of({day, day, day, day, day, day}));
  ASSERT_TRUE(one.summary.usable && six.summary.usable);
  EXPECT_EQ(six.plots, 12);
  EXPECT_EQ(six.pairs[0].odds, one.pairs[0].odds);
  EXPECT_EQ(six.pairs[0].interval.low, one.pairs[0].interval.low);
}

TEST(TrialOrdinal, Refuses) {
  Values values = values_of({{8, 7, 8, 6}});
  values.quantity = "speed";
  EXPECT_EQ(analyse_ordinal(plan_of(2), values).summary.problem.code, "not_scores");
  const auto apart = analyse_ordinal(plan_of(2), values_of({{8, 9, 5, 4}}));
  EXPECT_FALSE(apart.summary.usable);
  EXPECT_EQ(apart.summary.problem.code, "separated");
  Plan split = plan_of(2);
  split.layout = Layout::split_plot;
  EXPECT_EQ(analyse_ordinal(split, values_of({{8, 7, 8, 6}})).summary.problem.code,
            "one_treatment_only");
}

} // namespace
} // namespace baize::trials
