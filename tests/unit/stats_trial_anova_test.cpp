#include "baize/stats/distributions.h"
#include "baize/stats/sphericity.h"
#include "baize/stats/trial_means.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace {

using namespace baize::stats;

/// Three treatments in four blocks, plot by plot within blocks.
DesignedTrial blocks() {
  return {{3., 5., 7., 4., 7., 7., 2., 5., 8., 7., 7., 10.},
          {{"method", {1, 2, 3, 1, 2, 3, 1, 2, 3, 1, 2, 3}}},
          {{"block", {1, 1, 1, 2, 2, 2, 3, 3, 3, 4, 4, 4}}}};
}

// Pencil: block means 5 6 5 8, method means 4 6 8, grand mean 6; blocks 3 (1 + 0 + 1
// + 4) = 18, methods 4 (4 + 0 + 4) = 32, total 56, rest 6.
TEST(TrialAnova, BlocksByPencil) {
  const auto found = trial_anova(blocks());
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  ASSERT_EQ(found.strata.size(), 2U);
  EXPECT_EQ(found.strata[0].name, "block");
  EXPECT_TRUE(found.strata[0].terms.empty());
  EXPECT_EQ(found.strata[0].residual_df, 3);
  EXPECT_NEAR(found.strata[0].residual_ss, 18, 1e-13);
  const TrialStratum& plots = found.strata[1];
  EXPECT_EQ(plots.residual_df, 6);
  EXPECT_NEAR(plots.residual_ss, 6, 1e-13);
  ASSERT_EQ(plots.terms.size(), 1U);
  EXPECT_EQ(plots.terms[0].name, "method");
  EXPECT_EQ(plots.terms[0].df, 2);
  EXPECT_NEAR(plots.terms[0].ss, 32, 1e-13);
  EXPECT_NEAR(plots.terms[0].f.value(), 16, 1e-12);
  // Closed form for 2 degrees above: (1 + 2 F / 6)^-3.
  EXPECT_NEAR(plots.terms[0].p.value(), std::pow(1 + 16.0 / 3, -3), 1e-14);
  EXPECT_NEAR(plots.cv.value(), 1.0 / 6, 1e-14);
}

// Yates (1933): x = (t T + b B - G) / ((t - 1)(b - 1)), T, B and G the totals without
// the plot; the standard error of a difference with the lost plot's treatment is
// the root of s2 (2 / b + t / (b (b - 1)(t - 1))). Formulas from memory.
TEST(TrialAnova, ALostPlotByTheFormula) {
  DesignedTrial trial = blocks();
  trial.y[4].reset(); // method 2 in block 2
  const auto found = trial_anova(trial);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  const double x = (3.0 * 17 + 4.0 * 11 - 65) / (2 * 3);
  EXPECT_NEAR(found.y[4], x, 1e-12);
  EXPECT_EQ(found.lost, 1);
  EXPECT_EQ(found.strata[1].lost, 1);
  EXPECT_EQ(found.strata[1].residual_df, 5);
  EXPECT_NE(found.summary.message.find("lost plots filled: 1"), std::string::npos);
  // Bias of the filled table: (B - (t - 1) x)^2 / (t (t - 1)), taken off.
  trial.y[4] = x;
  const auto whole = trial_anova(trial);
  const double bias = (11 - 2 * x) * (11 - 2 * x) / 6;
  EXPECT_NEAR(found.strata[1].terms[0].ss, whole.strata[1].terms[0].ss - bias, 1e-12);
  EXPECT_NEAR(found.strata[1].residual_ss, whole.strata[1].residual_ss, 1e-12);
  trial.y[4].reset();
  const auto means = trial_means(trial, {0});
  const double s2 = found.strata[1].residual_ms;
  EXPECT_NEAR(means.differences[0].standard_error, std::sqrt(s2 * (2.0 / 4 + 3.0 / (4 * 3 * 2))),
              1e-12);
  EXPECT_NEAR(means.differences[1].standard_error, std::sqrt(s2 * 2 / 4), 1e-12);
  EXPECT_EQ(means.means[1].plots, 3);
}

// Latin square with a lost plot: x = (t (R + C + T) - 2 G) / ((t - 1)(t - 2)).
TEST(TrialAnova, ALostPlotOfALatinSquare) {
  DesignedTrial trial;
  trial.treatments = {{"feed", {}}};
  trial.strata = {{"row", {}}, {"column", {}}};
  const double y[] = {5, 7, 9, 12, 6, 9, 13, 5, 8, 14, 7, 9, 15, 6, 7, 11};
  for (int i = 0; i < 16; ++i) {
    trial.y.emplace_back(y[i]);
    trial.strata[0].level.push_back(i / 4);
    trial.strata[1].level.push_back(i % 4);
    trial.treatments[0].level.push_back((i / 4 + i) % 4);
  }
  trial.y[6].reset(); // row 1, column 2, feed 3
  const auto found = trial_anova(trial);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  ASSERT_EQ(found.strata.size(), 3U);
  const double row = 6 + 9 + 5;
  const double column = 9 + 7 + 7;
  const double same = 12 + 14 + 15;
  const double all = 143 - 13;
  EXPECT_NEAR(found.y[6], (4 * (row + column + same) - 2 * all) / 6, 1e-12);
  EXPECT_EQ(found.strata[2].residual_df, 5);
  EXPECT_EQ(found.strata[0].residual_df, 3);
}

/// Two ways of coring on whole plots, three feeds on subplots, three blocks.
DesignedTrial split_plot() {
  const double y[] = {52, 58, 61, 47, 55, 62, 55, 60, 66, 53, 57, 60, 49, 59, 63, 46, 50, 59};
  DesignedTrial trial{{}, {{"coring", {}}, {"feed", {}}}, {{"block", {}}, {"whole plot", {}}}};
  for (int i = 0; i < 18; ++i) {
    trial.y.emplace_back(y[i]);
    trial.strata[0].level.push_back(i / 6);
    trial.strata[1].level.push_back(i / 3);
    trial.treatments[0].level.push_back(i / 3 % 2);
    trial.treatments[1].level.push_back(i % 3);
  }
  return trial;
}

// Cochran and Cox (1957) 7.16, formulas from memory: r blocks, b subplots a whole
// plot, a whole plots, errors Ea and Eb.
TEST(TrialMeans, ASplitPlotHasFourKindsOfDifferences) {
  const DesignedTrial trial = split_plot();
  const auto anova = trial_anova(trial);
  ASSERT_TRUE(anova.summary.usable) << anova.summary.message;
  EXPECT_EQ(anova.strata[1].terms.at(0).name, "coring");
  EXPECT_EQ(anova.strata[1].residual_df, 2);
  ASSERT_EQ(anova.strata[2].terms.size(), 2U);
  EXPECT_EQ(anova.strata[2].terms[1].name, "coring:feed");
  EXPECT_EQ(anova.strata[2].residual_df, 8);
  const double ea = anova.strata[1].residual_ms;
  const double eb = anova.strata[2].residual_ms;
  const auto coring = trial_means(trial, {0});
  EXPECT_NEAR(coring.differences.at(0).standard_error, std::sqrt(2 * ea / 9), 1e-12);
  EXPECT_NEAR(coring.differences[0].df, 2, 1e-12);
  const auto feed = trial_means(trial, {1});
  EXPECT_NEAR(feed.differences.at(0).standard_error, std::sqrt(2 * eb / 6), 1e-12);
  EXPECT_NEAR(feed.differences[0].df, 8, 1e-12);
  const auto both = trial_means(trial, {0, 1});
  ASSERT_EQ(both.means.size(), 6U);
  EXPECT_EQ(both.means[4].level, (std::vector<int>{1, 1}));
  EXPECT_NEAR(both.means[4].mean, (55 + 57 + 50) / 3.0, 1e-12);
  for (const PairDifference& pair : both.differences) {
    if (both.means[pair.first].level[0] == both.means[pair.second].level[0]) {
      EXPECT_NEAR(pair.standard_error, std::sqrt(2 * eb / 3), 1e-12);
      EXPECT_NEAR(pair.df, 8, 1e-11);
    } else {
      EXPECT_NEAR(pair.standard_error, std::sqrt(2 * (2 * eb + ea) / (3 * 3)), 1e-12);
      const double df = std::pow(2 * eb + ea, 2) / (4 * eb * eb / 8 + ea * ea / 2);
      EXPECT_NEAR(pair.df, df, 1e-10);
    }
  }
}

// Anderson (1946), from memory: a lost subplot takes (r W + b S - T) / ((r - 1)(b - 1))
// with W its whole plot's total, S its combination's, T its whole-plot treatment's.
TEST(TrialAnova, ALostSubplotByTheFormula) {
  DesignedTrial trial = split_plot();
  trial.y[7].reset(); // block 2, coring 0, feed 1
  const auto found = trial_anova(trial);
  const double whole = 55 + 66;
  const double combination = 58 + 59;
  const double coring = 52 + 58 + 61 + 55 + 66 + 49 + 59 + 63;
  EXPECT_NEAR(found.y[7], (3 * whole + 3 * combination - coring) / (2 * 2), 1e-11);
  EXPECT_EQ(found.strata[2].residual_df, 7);
  EXPECT_EQ(found.strata[1].residual_df, 2);
}

// With a whole plot lost its subplots cannot tell its level; the whole plots can.
TEST(TrialAnova, ALostWholePlotCostsEachStratum) {
  DesignedTrial trial = split_plot();
  trial.y[6].reset();
  trial.y[7].reset();
  trial.y[8].reset();
  const auto found = trial_anova(trial);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_EQ(found.strata[1].lost, 1);
  EXPECT_EQ(found.strata[2].lost, 2);
  // Its mean by the formula for blocks, from means of whole plots.
  const double own = 57.0 + 57.0; // coring 0 in blocks 1 and 3
  const double block = (53 + 57 + 60) / 3.0;
  const double all = own + block + (47 + 55 + 62 + 46 + 50 + 59) / 3.0;
  const double expected = (2 * own + 3 * block - all) / 2;
  EXPECT_NEAR((found.y[6] + found.y[7] + found.y[8]) / 3, expected, 1e-11);
}

TEST(TrialAnova, AStripPlotHasAnErrorForEachWay) {
  DesignedTrial trial{
      {}, {{"roll", {}}, {"feed", {}}}, {{"block", {}}, {"across", {}}, {"along", {}}}};
  for (int i = 0; i < 24; ++i) {
    const int block = i / 6;
    const int roll = i / 3 % 2;
    const int feed = i % 3;
    trial.y.emplace_back((i * 7) % 11 + 3 * feed + block);
    trial.strata[0].level.push_back(block);
    trial.strata[1].level.push_back(block * 2 + roll);
    trial.strata[2].level.push_back(block * 3 + feed);
    trial.treatments[0].level.push_back(roll);
    trial.treatments[1].level.push_back(feed);
  }
  const auto found = trial_anova(trial);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  ASSERT_EQ(found.strata.size(), 4U);
  EXPECT_EQ(found.strata[1].terms.at(0).name, "roll");
  EXPECT_EQ(found.strata[1].residual_df, 3);
  EXPECT_EQ(found.strata[2].terms.at(0).name, "feed");
  EXPECT_EQ(found.strata[2].residual_df, 6);
  EXPECT_EQ(found.strata[3].terms.at(0).name, "roll:feed");
  EXPECT_EQ(found.strata[3].residual_df, 6);
}

TEST(TrialContrast, ByPencil) {
  const auto found = trial_contrast(blocks(), {0}, {1, -2, 1});
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_NEAR(found.estimate, 0, 1e-13);
  EXPECT_NEAR(found.standard_error, std::sqrt(6.0 / 4), 1e-13);
  const auto line = trial_contrast(blocks(), {0}, {-1, 0, 1});
  EXPECT_NEAR(line.estimate, 4, 1e-13);
  EXPECT_NEAR(line.t, 4 / std::sqrt(0.5), 1e-12);
  EXPECT_NEAR(line.p, 2 * t_upper(line.t, 6), 1e-15);
  EXPECT_NEAR(line.interval.high - line.interval.low, 2 * t_quantile(0.975, 6) * std::sqrt(0.5),
              1e-12);
}

// Two times: nothing to correct.
TEST(Sphericity, OneWhereThereAreTwoTimes) {
  DesignedTrial trial{{1., 2., 3., 5., 4., 7., 2., 6., 1., 4., 6., 6.},
                      {{"method", {0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1}},
                       {"day", {0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1}}},
                      {{"plot", {0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5}}}};
  const auto found = sphericity(trial, 1);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_DOUBLE_EQ(found.greenhouse_geisser, 1);
  ASSERT_EQ(found.tests.size(), 2U);
  EXPECT_EQ(found.tests[0].name, "day");
  EXPECT_DOUBLE_EQ(found.tests[0].p, found.tests[0].p_greenhouse_geisser);
  trial.y[3].reset();
  EXPECT_EQ(sphericity(trial, 1).summary.problem.code, "lost_plots");
  EXPECT_EQ(sphericity(blocks(), 0).summary.problem.code, "");
  EXPECT_EQ(sphericity(split_plot(), 0).summary.problem.code, "not_repeated");
  EXPECT_EQ(sphericity(split_plot(), 5).summary.problem.code, "no_such_factor");
}

// The residuals lie along one direction only, so epsilon is its least, 1 / (k - 1).
TEST(Sphericity, LeastWhereOneDirectionVaries) {
  DesignedTrial trial{{}, {{"day", {}}}, {{"plot", {}}}};
  const double size[] = {-3, -1, 0, 1, 3};
  const double way[] = {1, 1, -2};
  for (int plot = 0; plot < 5; ++plot) {
    for (int day = 0; day < 3; ++day) {
      trial.y.emplace_back(size[plot] * way[day] + 10 * plot + day);
      trial.strata[0].level.push_back(plot);
      trial.treatments[0].level.push_back(day);
    }
  }
  const auto found = sphericity(trial, 0);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_NEAR(found.greenhouse_geisser, 0.5, 1e-12);
  // ((4 + 1) 2 / 2 - 2) / (2 (4 - 1)) = 1/2.
  EXPECT_NEAR(found.huynh_feldt, 0.5, 1e-12);
}

std::string code_of(const DesignedTrial& trial, int highest = 6) {
  const auto found = trial_anova(trial, {highest});
  EXPECT_FALSE(found.summary.usable);
  EXPECT_EQ(found.summary.message, baize::units::sentence(found.summary.problem));
  return found.summary.problem.code;
}

TEST(TrialAnova, RefusesInOneSentence) {
  const DesignedTrial good = blocks();
  EXPECT_EQ(code_of(good, 0), "option_out_of_range");
  EXPECT_EQ(code_of({}), "too_few");
  auto trial = good;
  trial.treatments.clear();
  EXPECT_EQ(code_of(trial), "too_few");
  trial = good;
  trial.treatments[0].level.assign(12, 1);
  EXPECT_EQ(code_of(trial), "too_few");
  trial = good;
  trial.treatments[0].level.pop_back();
  EXPECT_EQ(code_of(trial), "lengths_differ");
  trial = good;
  trial.y[3] = std::numeric_limits<double>::infinity();
  EXPECT_EQ(code_of(trial), "not_finite");
  trial = good;
  std::swap(trial.treatments[0].level[0], trial.treatments[0].level[4]);
  EXPECT_EQ(code_of(trial), "not_balanced");
  trial = good;
  trial.treatments.assign(7, good.treatments[0]);
  EXPECT_EQ(code_of(trial), "too_many");
  trial = good;
  trial.treatments.push_back({"again", good.treatments[0].level});
  EXPECT_EQ(code_of(trial), "combination_missing");
  trial = good;
  trial.strata.push_back(good.strata[0]);
  EXPECT_EQ(code_of(trial), "stratum_without_units");
  trial = good;
  trial.y[1].reset();
  trial.y[4].reset();
  trial.y[7].reset();
  trial.y[10].reset();
  EXPECT_EQ(code_of(trial), "cannot_fill");
  trial = good;
  for (std::size_t i = 0; i < 12; ++i) {
    trial.y[i] = good.treatments[0].level[i] + 10 * good.strata[0].level[i];
  }
  EXPECT_EQ(code_of(trial), "no_spread");
  EXPECT_EQ(code_of({{1., 2., 3., 5.}, {{"a", {1, 1, 2, 2}}, {"b", {1, 2, 1, 2}}}, {}}),
            "no_residual");
  EXPECT_EQ(trial_means(good, {1}).summary.problem.code, "no_such_factor");
  EXPECT_EQ(trial_contrast(good, {0}, {1, 1, 1}).summary.problem.code, "not_a_contrast");
  EXPECT_EQ(trial_contrast(good, {0}, {1, -1}).summary.problem.code, "lengths_differ");
  EXPECT_EQ(trial_contrast(good, {0}, {1, -1, 0}, {{}, 1}).summary.problem.code,
            "option_out_of_range");
}

// A 2 x 2 with its interaction confounded with blocks in one of two repeats only.
TEST(TrialAnova, APartlyConfoundedTermIsRefused) {
  DesignedTrial trial{{1., 4., 2., 7., 3., 5., 6., 8.},
                      {{"a", {0, 1, 0, 1, 0, 1, 0, 1}}, {"b", {0, 1, 1, 0, 0, 0, 1, 1}}},
                      {{"block", {0, 0, 1, 1, 2, 3, 2, 3}}}};
  EXPECT_EQ(code_of(trial), "not_balanced");
  // In both repeats: the interaction is tested between blocks.
  trial.treatments[0].level = {0, 1, 0, 1, 0, 1, 0, 1};
  trial.treatments[1].level = {0, 1, 1, 0, 0, 1, 1, 0};
  trial.strata[0].level = {0, 0, 1, 1, 2, 2, 3, 3};
  const auto found = trial_anova(trial);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_EQ(found.strata[0].terms.at(0).name, "a:b");
  EXPECT_EQ(found.strata[1].terms.size(), 2U);
}

// 3 x 3 in blocks of three with the same a + b: two of the interaction's four
// degrees of freedom lie between blocks.
TEST(TrialAnova, AHalfConfoundedTermIsRefused) {
  DesignedTrial trial{{}, {{"a", {}}, {"b", {}}}, {{"block", {}}}};
  for (int i = 0; i < 18; ++i) {
    trial.y.emplace_back((i * i) % 7);
    trial.treatments[0].level.push_back(i % 9 / 3);
    trial.treatments[1].level.push_back(i % 3);
    trial.strata[0].level.push_back(i / 9 * 3 + (i % 9 / 3 + i) % 3);
  }
  EXPECT_EQ(code_of(trial), "term_split");
}

TEST(Nested, NumbersThePairsThatOccur) {
  const Grouping found = nested({"block", {1, 1, 2, 2}}, {"whole plot", {1, 2, 1, 2}});
  EXPECT_EQ(found.name, "block:whole plot");
  EXPECT_EQ(found.level, (std::vector<int>{0, 1, 2, 3}));
  EXPECT_TRUE(nested({"a", {1}}, {"b", {}}).level.empty());
}

} // namespace
