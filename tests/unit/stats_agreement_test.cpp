#include "baize/stats/area_under_curve.h"
#include "baize/stats/binomial.h"
#include "baize/stats/bland_altman.h"
#include "baize/stats/concordance.h"
#include "baize/stats/descriptive.h"
#include "baize/stats/icc.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace baize;
using Values = std::vector<double>;

// By pencil: differences 1, 2, 3; bias 2, sd 1; t(0.975, 2) = 4.30265.
TEST(BlandAltman, OfThreePairs) {
  const auto found = stats::bland_altman(Values{6, 8, 10}, Values{5, 6, 7});
  ASSERT_TRUE(found.summary.usable);
  EXPECT_DOUBLE_EQ(found.bias, 2);
  EXPECT_DOUBLE_EQ(found.sd, 1);
  EXPECT_NEAR(found.limits.low, 0.04, 1e-14);
  EXPECT_NEAR(found.limits.high, 3.96, 1e-14);
  EXPECT_NEAR(found.bias_interval.high, 2 + 4.30265273 / std::sqrt(3.0), 1e-8);
  // 1/3 + 1.96^2 / 4 = 1.2937333
  EXPECT_NEAR(found.limit_se * found.limit_se, 1.2937333333, 1e-10);
  EXPECT_NEAR(found.upper_limit_interval.low, 3.96 - 4.30265273 * found.limit_se, 1e-8);
  EXPECT_NEAR(found.lower_limit_interval.high, 0.04 + 4.30265273 * found.limit_se, 1e-8);
}

TEST(BlandAltman, OfAConstantShiftHasABiasButNoLimits) {
  const auto found = stats::bland_altman(Values{0.3, 0.6, 0.9}, Values{0.2, 0.5, 0.8});
  EXPECT_EQ(found.summary.termination, stats::Termination::degenerate);
  EXPECT_FALSE(found.summary.usable);
  EXPECT_NEAR(found.bias, 0.1, 1e-15);
  EXPECT_EQ(found.sd, 0);
  EXPECT_TRUE(std::isnan(found.limit_se));
}

// By pencil: means 2 and 3, divisor n: variances 2/3 and 2/3, covariance 2/3;
// 2 (2/3) / (4/3 + 1) = 4/7, correlation 1.
TEST(Concordance, OfAShiftIsItsAccuracy) {
  const auto found = stats::concordance(Values{1, 2, 3}, Values{2, 3, 4});
  ASSERT_TRUE(found.summary.usable);
  EXPECT_NEAR(found.coefficient, 4.0 / 7, 1e-15);
  EXPECT_NEAR(found.correlation, 1, 1e-15);
  EXPECT_NEAR(found.accuracy, 4.0 / 7, 1e-15);
  EXPECT_NEAR(found.location_shift * found.location_shift, 1.5, 1e-14);
  EXPECT_FALSE(found.interval.has_value());
}

// By pencil: 1 2 3 4 against 2 1 4 3; covariance 0.75, variances 1.25:
// coefficient 0.6, no shift, so the variance of z is 1 / (n - 2) = 1/2.
TEST(Concordance, WithoutShiftHasFishersError) {
  const auto found = stats::concordance(Values{1, 2, 3, 4}, Values{2, 1, 4, 3});
  ASSERT_TRUE(found.summary.usable && found.interval.has_value());
  EXPECT_NEAR(found.coefficient, 0.6, 1e-14);
  EXPECT_NEAR(*found.z_se, std::sqrt(0.5), 1e-14);
  const double z = std::log(4.0) / 2; // (1 + 0.6) / (1 - 0.6) = 4
  EXPECT_NEAR(found.interval->high, std::tanh(z + 1.959963985 * std::sqrt(0.5)), 1e-9);
  EXPECT_NEAR(found.interval->low, std::tanh(z - 1.959963985 * std::sqrt(0.5)), 1e-9);
}

// By pencil: rows 1 2, 3 5: item means 1.5 and 4, observers 2 and 3.5, mean 2.75.
// BMS 6.25, JMS 2.25, residuals 0.25 each: EMS 0.25, WMS (2.25 + 0.25) / 2 = 1.25.
TEST(Icc, OfTwoByTwo) {
  const auto found = stats::intraclass_correlation({{1, 2}, {3, 5}});
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_NEAR(found.between_items, 6.25, 1e-14);
  EXPECT_NEAR(found.between_observers, 2.25, 1e-14);
  EXPECT_NEAR(found.residual, 0.25, 1e-14);
  EXPECT_NEAR(found.within_items, 1.25, 1e-14);
  EXPECT_NEAR(found.one_way_single.value, 5 / 7.5, 1e-14);
  EXPECT_NEAR(found.random_single.value, 6 / 8.5, 1e-14);
  EXPECT_NEAR(found.fixed_single.value, 6 / 6.5, 1e-14);
  EXPECT_NEAR(found.one_way_mean.value, 0.8, 1e-14);
  EXPECT_NEAR(found.random_mean->value, 6 / 7.25, 1e-14);
  EXPECT_NEAR(found.fixed_mean.value, 0.96, 1e-14);
  // F(0.975; 1, 1) = 647.789 (printed tables, from memory).
  EXPECT_NEAR(found.fixed_single.interval.high, (25 * 647.789 - 1) / (25 * 647.789 + 1), 1e-9);
}

TEST(Icc, OfObserversWhoDifferByAConstantHasNoInterval) {
  const auto found = stats::intraclass_correlation({{1.1, 2.1}, {3.3, 4.3}, {7.7, 8.7}});
  EXPECT_EQ(found.summary.termination, stats::Termination::degenerate);
  EXPECT_EQ(found.fixed_single.value, 1);
  EXPECT_LT(found.random_single.value, 1);
  EXPECT_TRUE(std::isnan(found.fixed_mean.value));
}

// By pencil: BMS 1/6, JMS 0, EMS 1/2: the mean's form would divide by
// 1/6 - 1/2 / 3 = 0.
TEST(Icc, OfChanceOnlyHasNoRandomMean) {
  const auto found = stats::intraclass_correlation({{2, 2}, {2, 1}, {1, 2}});
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_NEAR(found.between_items, 1.0 / 6, 1e-15);
  EXPECT_NEAR(found.between_observers, 0, 1e-15);
  EXPECT_NEAR(found.residual, 0.5, 1e-15);
  EXPECT_NEAR(found.fixed_single.value, -0.5, 1e-14);
  EXPECT_FALSE(found.random_mean.has_value());
}

TEST(Icc, OfItemsThatDoNotDifferIsDegenerate) {
  const auto found = stats::intraclass_correlation({{1, 2}, {2, 1}});
  EXPECT_EQ(found.summary.termination, stats::Termination::degenerate);
  EXPECT_EQ(found.summary.message,
            "item means is 'all the same', but must be different, since agreement is measured "
            "against their spread.");
}

// By pencil: mean 2, squares 4 + 1 + 0 + 1 + 4 = 10, neighbours 2 + 0 + 0 + 2 = 4.
TEST(Description, OfFiveValues) {
  const auto found = stats::describe(Values{0, 1, 2, 3, 4});
  ASSERT_TRUE(found.summary.usable);
  EXPECT_EQ(found.mean, 2);
  EXPECT_DOUBLE_EQ(*found.sd, std::sqrt(2.5));
  EXPECT_DOUBLE_EQ(*found.autocorrelation_1, 0.4);
  EXPECT_EQ(found.smallest, 0);
  EXPECT_EQ(found.lower_quartile, 1);
  EXPECT_EQ(found.median, 2);
  EXPECT_EQ(found.upper_quartile, 3);
  EXPECT_EQ(found.largest, 4);
}

TEST(Description, OfOneOrEqualValuesSaysWhatThereIs) {
  const auto one = stats::describe(Values{7});
  ASSERT_TRUE(one.summary.usable);
  EXPECT_EQ(one.mean, 7);
  EXPECT_FALSE(one.sd.has_value());
  const auto equal = stats::describe(Values{0.1, 0.1, 0.1});
  ASSERT_TRUE(equal.summary.usable);
  EXPECT_EQ(equal.sd, 0);
  EXPECT_FALSE(equal.autocorrelation_1.has_value());
}

// By pencil: with none of n, the exact upper end is 1 - (a / 2)^(1 / n), and
// Wilson's is z^2 / (n + z^2).
TEST(BinomialIntervals, OfNone) {
  const auto exact = stats::clopper_pearson(0, 10, {0.9});
  EXPECT_EQ(exact.interval.low, 0);
  EXPECT_NEAR(exact.interval.high, 1 - std::pow(0.05, 0.1), 1e-14);
  const auto score = stats::wilson(0, 10);
  const double z2 = 1.959963984540054 * 1.959963984540054;
  EXPECT_EQ(score.interval.low, 0);
  EXPECT_NEAR(score.interval.high, z2 / (10 + z2), 1e-14);
}

TEST(AreaUnderCurve, OfUnevenTimes) {
  // 1 * (2 + 4) / 2 + 3 * (4 + 0) / 2 = 9; stairs 9 + 1 * 4 / 2 = 11.
  const auto area = stats::area_under_curve(Values{0, 1, 4}, Values{2, 4, 0});
  ASSERT_TRUE(area.summary.usable);
  EXPECT_DOUBLE_EQ(area.trapezoid, 9);
  EXPECT_DOUBLE_EQ(area.stairs, 11);
  EXPECT_DOUBLE_EQ(area.mean_height, 2.25);
}

} // namespace
