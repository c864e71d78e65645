#include "baize/stats/distributions.h"
#include "baize/stats/one_way_anova.h"
#include "baize/stats/power.h"
#include "baize/stats/power_simulation.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace {

using namespace baize::stats;

TTestPlan t_plan(double difference) {
  TTestPlan plan;
  plan.difference = difference;
  return plan;
}
AnovaPlan anova_plan(int groups, double effect) {
  AnovaPlan plan;
  plan.groups = groups;
  plan.effect = effect;
  return plan;
}
SharesPlan shares_plan(double first, double second) {
  SharesPlan plan;
  plan.first = first;
  plan.second = second;
  return plan;
}

// Two groups: F is t squared, Cohen's f half the difference in standard deviations.
TEST(Power, TwoGroupsAreATTest) {
  for (const double n : {2.0, 5.0, 17.0, 60.0}) {
    EXPECT_NEAR(power_of(anova_plan(2, 0.4), n).power, power_of(t_plan(0.8), n).power, 1e-10) << n;
  }
}

// A difference of next to nothing is found as often as the risk says.
TEST(Power, IsAlphaWithoutADifference) {
  EXPECT_NEAR(power_of(t_plan(1e-9), 12).power, 0.05, 1e-9);
  EXPECT_NEAR(power_of(anova_plan(4, 1e-7), 12).power, 0.05, 1e-9);
  auto one = t_plan(1e-9);
  one.two_sided = false;
  EXPECT_NEAR(power_of(one, 12).power, 0.05, 1e-8);
  EXPECT_NEAR(power_of(shares_plan(0.4, 0.4 + 1e-10), 50).power, 0.05, 1e-8);
}

// Pencil: 0.5 against 0.9, n = 40: shift sqrt(40) 0.4, alike sqrt(1.4 x 0.3), apart
// sqrt(0.25 + 0.09).
TEST(Power, SharesByPencil) {
  const double z = normal_quantile(0.975) * std::sqrt(0.42);
  const double shift = 0.4 * std::sqrt(40);
  const double expected =
      normal_cdf((shift - z) / std::sqrt(0.34)) + normal_cdf((-shift - z) / std::sqrt(0.34));
  EXPECT_NEAR(power_of(shares_plan(0.5, 0.9), 40).power, expected, 1e-14);
  EXPECT_EQ(power_of(shares_plan(0, 1), 40).power, 1);
  EXPECT_EQ(power_of(shares_plan(0, 1), 2).power, 1); // 1.41 > 1.96 x 0.707
}

TEST(SampleSize, IsTheLeastThatReaches) {
  const auto check = [](const auto& plan) {
    const auto found = sample_size(plan, 0.85);
    ASSERT_TRUE(found.summary.usable) << found.summary.message;
    EXPECT_NEAR(power_of(plan, found.exact).power, 0.85, 1e-9);
    EXPECT_GE(found.power, 0.85 - 1e-9);
    EXPECT_LT(power_of(plan, found.n - 1).power, 0.85);
  };
  check(t_plan(0.7));
  auto paired = t_plan(0.7);
  paired.paired = true;
  check(paired);
  check(anova_plan(5, 0.3));
  check(shares_plan(0.2, 0.45));
  EXPECT_EQ(sample_size(t_plan(100), 0.5).n, 2);
  EXPECT_EQ(sample_size(t_plan(1e-6), 0.9).summary.problem.code, "out_of_reach");
}

TEST(Power, RefusesInOneSentence) {
  EXPECT_EQ(power_of(t_plan(0), 10).summary.problem.code, "option_out_of_range");
  EXPECT_EQ(power_of(t_plan(1), 1.5).summary.problem.code, "n_out_of_range");
  EXPECT_EQ(power_of(t_plan(1), NAN).summary.problem.code, "n_out_of_range");
  EXPECT_EQ(power_of(anova_plan(1, 1), 10).summary.problem.code, "option_out_of_range");
  EXPECT_EQ(power_of(anova_plan(3, 0), 10).summary.problem.code, "option_out_of_range");
  EXPECT_EQ(power_of(shares_plan(0.3, 0.3), 10).summary.problem.code, "option_out_of_range");
  EXPECT_EQ(power_of(shares_plan(-0.1, 0.3), 10).summary.problem.code, "option_out_of_range");
  auto plan = t_plan(1);
  plan.sd = 0;
  EXPECT_EQ(power_of(plan, 10).summary.problem.code, "option_out_of_range");
  plan = t_plan(1);
  plan.alpha = 1;
  EXPECT_EQ(power_of(plan, 10).summary.problem.code, "option_out_of_range");
  EXPECT_EQ(sample_size(t_plan(1), 0.05).summary.problem.code, "option_out_of_range");
  EXPECT_FALSE(sample_size(t_plan(1), 1).summary.usable);
}

RC_GTEST_PROP(PowerLaws, MorePlotsAndLargerDifferencesHelp, ()) {
  const double d = *rc::gen::inRange(5, 150) / 100.0;
  const double n = *rc::gen::inRange(2, 60);
  RC_ASSERT(power_of(t_plan(d), n + 1).power >= power_of(t_plan(d), n).power - 1e-12);
  RC_ASSERT(power_of(t_plan(d + 0.05), n).power >= power_of(t_plan(d), n).power - 1e-12);
  auto scaled = t_plan(-30 * d);
  scaled.sd = 30;
  RC_ASSERT(std::fabs(power_of(scaled, n).power - power_of(t_plan(d), n).power) < 1e-11);
}

// A one-way trial of 3 treatments, 8 plots each, means 0 0.6 1.2: f = 0.4899.
std::optional<bool> one_trial(Random& random) {
  std::vector<std::vector<double>> groups(3);
  for (std::size_t g = 0; g < 3; ++g) {
    for (int i = 0; i < 8; ++i) {
      groups[g].push_back(0.6 * static_cast<double>(g) + random.normal());
    }
  }
  const auto anova = one_way_anova(groups);
  return anova.summary.usable ? std::optional(anova.p < 0.05) : std::nullopt;
}

// Within four standard errors of the formula.
TEST(SimulatePower, MeetsTheFormula) {
  const auto found = simulate_power(one_trial, {4000, 5, 0.95});
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  const double power = power_of(anova_plan(3, std::sqrt(0.24)), 8).power;
  EXPECT_NEAR(found.power, power, 4 * std::sqrt(power * (1 - power) / 4000));
  EXPECT_LT(found.interval.low, found.power);
  EXPECT_EQ(found.unanswered, 0);
  EXPECT_EQ(simulate_power(one_trial, {4000, 5, 0.95}).significant, found.significant);
  EXPECT_NE(simulate_power(one_trial, {4000, 6, 0.95}).significant, found.significant);
}

// Repeats have streams of their own: fewer repeats are the first of more.
TEST(SimulatePower, RepeatsStandAlone) {
  int first = 0;
  std::vector<double> seen;
  const TrialDraw draw = [&](Random& random) {
    seen.push_back(random.uniform());
    return std::optional(seen.back() < 0.5);
  };
  first = simulate_power(draw, {10, 3, 0.95}).repeats;
  const std::vector<double> ten(seen);
  seen.clear();
  simulate_power(draw, {30, 3, 0.95});
  seen.resize(10);
  EXPECT_EQ(first, 10);
  EXPECT_EQ(seen, ten);
}

TEST(SimulatePower, StopsAndRefuses) {
  const auto half =
      simulate_power(one_trial, {100, 1, 0.95}, [](double done) { return done < 0.3; });
  EXPECT_EQ(half.summary.termination, Termination::stopped);
  EXPECT_FALSE(half.summary.usable);
  EXPECT_EQ(simulate_power(one_trial, {0}).summary.problem.code, "option_out_of_range");
  EXPECT_EQ(simulate_power(one_trial, {10, 1, 1}).summary.problem.code, "option_out_of_range");
  const auto none = simulate_power([](Random&) { return std::optional<bool>(); }, {10});
  EXPECT_EQ(none.unanswered, 10);
  EXPECT_EQ(none.power, 0);
}

} // namespace
