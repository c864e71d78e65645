#include "baize/stats/distributions.h"
#include "baize/trials/power.h"
#include "unit/trials_given.h"

#include <gtest/gtest.h>

#include <cmath>

namespace baize::trials {
namespace {

PowerOptions one_error() {
  PowerOptions options;
  options.spread = {0, 1, 0};
  options.visits = 1;
  options.repeats = 20000;
  return options;
}

// Cohen J (1992) Psychol. Bull. 112:155-159, table 2: two means, alpha 0.05, power
// 0.80: 64 in each group for a difference of 0.5 s.d., 26 for 0.8.
TEST(TrialPower, AgreesWithThePublishedTable) {
  for (const auto& [blocks, difference] : {std::pair(64, 0.5), std::pair(26, 0.8)}) {
    const TrialPower power =
        simulate_power({Layout::completely_randomised, 2, 1, blocks}, one_error());
    ASSERT_TRUE(power.summary.usable);
    EXPECT_NEAR(power.tables.at(0).detectable, difference, 0.01) << blocks;
    EXPECT_EQ(power.tables[0].error_df, 2 * blocks - 2);
  }
}

// R 4.2.2: power.t.test(n = 5, sd = sqrt(2), power = 0.8, type = "one.sample")$delta
// = 2.378706; two treatments in five blocks are five differences of deviation sqrt 2.
TEST(TrialPower, TwoTreatmentsInBlocksAreAPairedT) {
  const TrialPower power = simulate_power({Layout::randomised_blocks, 2, 1, 5}, one_error());
  EXPECT_NEAR(power.tables.at(0).detectable, 2.378706, 0.03);
}

TEST(TrialPower, WithoutADifferenceItIsTheRisk) {
  for (const Layout layout : {Layout::split_plot, Layout::strip_plot}) {
    PowerOptions options = one_error();
    options.spread.whole_plot = 0.7;
    const TrialPower power = simulate_power({layout, 3, 4, 4}, options);
    ASSERT_EQ(power.tables.size(), 2U);
    for (const TablePower& table : power.tables) {
      EXPECT_EQ(table.curve.front().difference, 0);
      EXPECT_NEAR(table.curve.front().power, 0.05, 0.005) << table.of;
      EXPECT_NEAR(table.curve.at(4).power, 0.8, 0.001);
      EXPECT_LE(table.curve[4].interval.low, 0.8);
      for (std::size_t i = 1; i < table.curve.size(); ++i) {
        EXPECT_GE(table.curve[i].power, table.curve[i - 1].power);
      }
    }
  }
}

/// By pencil: means over s second treatments vary with whole^2 + plot^2 / s, and
/// nothing else in a split plot's comparison of treatments.
TEST(TrialPower, WholePlotsAreComparedWithTheirOwnError) {
  PowerOptions split = one_error();
  split.spread = {0.6, 1.6, 0}; // 0.36 + 2.56 / 4 = 1
  const auto wholes = simulate_power({Layout::split_plot, 3, 4, 5}, split);
  const auto blocks = simulate_power({Layout::randomised_blocks, 3, 1, 5}, one_error());
  EXPECT_NEAR(wholes.tables.at(0).detectable / blocks.tables.at(0).detectable, 1, 0.02);
}

TEST(TrialPower, MoreBlocksFindLessAndUnitsDoNotMatter) {
  PowerOptions options;
  const TrialPower power = simulate_power({Layout::randomised_blocks, 3, 1, 4}, options);
  double before = INFINITY;
  for (const auto& one : power.other_blocks) {
    EXPECT_LT(one.detectable, before) << one.blocks;
    before = one.detectable;
  }
  EXPECT_EQ(power.other_blocks.front().blocks, 2);
  options.spread = {3, 4, 5};
  const TrialPower tenfold = simulate_power({Layout::randomised_blocks, 3, 1, 4}, options);
  EXPECT_NEAR(tenfold.tables.at(0).detectable, 10 * power.tables.at(0).detectable, 1e-6);
}

TEST(TrialPower, RefusesWhatCannotBe) {
  PowerOptions options;
  options.spread = {0.5, 0, 0};
  EXPECT_EQ(simulate_power({}, options).summary.problem.code, "option_out_of_range");
  options = {};
  options.power = 1;
  EXPECT_FALSE(options.valid());
  EXPECT_EQ(simulate_power({Layout::randomised_blocks, 3, 1, 1}).summary.problem.field, "blocks");
  EXPECT_EQ(simulate_power({Layout::split_plot, 3, 1, 4}).summary.problem.field, "seconds");
}

} // namespace
} // namespace baize::trials
