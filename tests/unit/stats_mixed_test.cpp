#include "baize/stats/mixed.h"
#include "baize/stats/mixed_contrast.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace {

using namespace baize::stats;

/// Three invented plots with two readings each: means 2, 6 and 10, each reading 1
/// away from its plot's mean.
MixedModel three_plots() {
  return {{1, 3, 5, 7, 9, 11}, {}, true, {{"plot", {4, 4, 7, 7, 9, 9}}}};
}

// Pencil, balanced one-way layout: mean squares 32 between (2 df), 2 within (3 df);
// variances (32 - 2) / 2 = 15 and 2; the mean's error sqrt(32 / 6) on 2 df; a
// plot's deviation is shrunk by 15 / (15 + 2 / 2).
TEST(Mixed, BalancedOneWayByPencil) {
  const auto fit = fit_mixed(three_plots());
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_EQ(fit.summary.termination, Termination::converged);
  EXPECT_NEAR(fit.coefficients[0].value, 6, 1e-12);
  EXPECT_NEAR(fit.coefficients[0].standard_error, std::sqrt(32.0 / 6), 1e-8);
  EXPECT_NEAR(fit.coefficients[0].df, 2, 1e-6);
  EXPECT_NEAR(fit.random[0].sd[0], std::sqrt(15), 1e-8);
  EXPECT_NEAR(fit.residual_sd, std::sqrt(2), 1e-8);
  ASSERT_EQ(fit.random[0].groups.size(), 3U);
  EXPECT_EQ(fit.random[0].groups[1].group, 7);
  EXPECT_NEAR(fit.random[0].groups[0].value[0], -3.75, 1e-8);
  EXPECT_NEAR(fit.random[0].groups[1].value[0], 0, 1e-8);
  EXPECT_NEAR(fit.random[0].groups[2].sd[0], std::sqrt(1 / (1.0 / 15 + 1)), 1e-8);
  EXPECT_EQ(fit.parameters, 3);
  // 3.1824, t of 0.975 with 2 df is 4.302653 (tables).
  EXPECT_NEAR(fit.coefficients[0].interval.high, 6 + 4.302653 * std::sqrt(32.0 / 6), 1e-4);
}

// Pencil, same layout: by maximum likelihood the between mean square is divided by
// the 3 plots: (64 / 3 - 2) / 2.
TEST(Mixed, FullMaximumLikelihoodByPencil) {
  const auto fit = fit_mixed(three_plots(), {.restricted = false});
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_NEAR(fit.random[0].sd[0], std::sqrt((64.0 / 3 - 2) / 2), 1e-8);
  EXPECT_NEAR(fit.residual_sd, std::sqrt(2), 1e-8);
  // log L: 3 plots, each with eigenvalues 64/3 and 2; quadratic forms add to 6.
  const double criterion = 6 * std::log(2 * std::acos(-1)) + 3 * std::log(64.0 / 3 * 2) + 6;
  EXPECT_NEAR(fit.criterion, criterion, 1e-10);
}

// Plots that differ less than their readings: the variance between is 0.
TEST(Mixed, NoVarianceBetweenIsABoundary) {
  const auto fit = fit_mixed({{1, 9, 2, 8, 1, 9}, {}, true, {{"plot", {1, 1, 2, 2, 3, 3}}}});
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_EQ(fit.summary.termination, Termination::boundary);
  EXPECT_EQ(fit.random[0].sd[0], 0);
  EXPECT_NEAR(fit.coefficients[0].value, 5, 1e-12);
  EXPECT_NEAR(fit.residual_sd, std::sqrt(82.0 / 5), 1e-8); // squares 16, 9, 16, each twice
  EXPECT_NEAR(fit.coefficients[0].df, 5, 1e-6);
}

// Pencil: blocks of both treatments; the difference is that of the mean of the
// pairs, its error from the pairs' differences 3, 1, 2, 2: variance 2/3 over 4.
TEST(Mixed, BlocksArePairs) {
  MixedModel model{{10, 13, 20, 21, 31, 33, 39, 41}, {{0, 1, 0, 1, 0, 1, 0, 1}}, true, {}};
  model.random.push_back({"block", {1, 1, 2, 2, 3, 3, 4, 4}});
  const auto fit = fit_mixed(model);
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_NEAR(fit.coefficients[1].value, 2, 1e-10);
  EXPECT_NEAR(fit.coefficients[1].standard_error, std::sqrt(2.0 / 3 / 4), 1e-8);
  EXPECT_NEAR(fit.coefficients[1].df, 3, 1e-5);
  const auto test = mixed_f_test(fit, {{0, 1}, {0, 2}});
  ASSERT_TRUE(test.summary.usable) << test.summary.message;
  EXPECT_EQ(test.df, 1);
  EXPECT_NEAR(test.f, 24, 1e-6);
  EXPECT_NEAR(test.p, fit.coefficients[1].p, 1e-8);
  const auto sum = mixed_contrast(fit, {1, 1});
  EXPECT_NEAR(sum.estimate.value, 27, 1e-10);
}

std::string code(const MixedModel& model, const MixedOptions& options = {}) {
  const auto fit = fit_mixed(model, options);
  EXPECT_FALSE(fit.summary.usable);
  return fit.summary.problem.code;
}

TEST(Mixed, Refusals) {
  const auto good = three_plots();
  EXPECT_EQ(code(good, {.confidence = 1}), "option_out_of_range");
  EXPECT_EQ(code(good, {.max_iterations = 0}), "option_out_of_range");
  auto model = good;
  model.y[2] = std::numeric_limits<double>::quiet_NaN();
  EXPECT_EQ(code(model), "not_finite");
  model = good;
  model.random[0].group.pop_back();
  EXPECT_EQ(code(model), "lengths_differ");
  model = good;
  model.fixed = {{1, 2, 3}};
  EXPECT_EQ(code(model), "lengths_differ");
  model = good;
  model.random.clear();
  EXPECT_EQ(code(model), "too_few");
  model = good;
  model.random[0].constant = false;
  EXPECT_EQ(code(model), "too_few");
  model = {{1, 2}, {}, true, {{"plot", {1, 2}}}};
  EXPECT_EQ(code(model), "too_few");
  model = good;
  model.random[0].group = {1, 1, 1, 1, 1, 1};
  EXPECT_EQ(code(model), "one_group");
  model.random[0].group = {1, 2, 3, 4, 5, 6};
  EXPECT_EQ(code(model), "group_is_row");
  model.random[0].group = {1, 2, 3, 4, 5, 2000000000};
  EXPECT_EQ(code(model), "group_is_row");
}

TEST(Mixed, DataThatCannotAnswer) {
  auto model = three_plots();
  model.fixed = {{2, 2, 2, 2, 2, 2}};
  EXPECT_EQ(code(model), "singular_design");
  model = three_plots();
  model.random[0].slopes = {{0, 0, 0, 0, 0, 0}};
  model.random[0].constant = false;
  EXPECT_EQ(code(model), "singular_design");
  model = three_plots();
  model.random.push_back({"again", {1, 1, 2, 2, 3, 3}});
  EXPECT_EQ(code(model), "same_term");
  model = three_plots();
  model.y = {4, 4, 4, 4, 4, 4};
  EXPECT_EQ(code(model), "no_residual");
  model.y = {1, 1, 2, 2, 9, 9};
  EXPECT_EQ(code(model), "no_residual");
}

TEST(Mixed, FitsThatMayNotBeCompared) {
  const auto restricted = fit_mixed(three_plots());
  EXPECT_EQ(likelihood_ratio(restricted, restricted).summary.problem.code, "fits_differ");
  EXPECT_EQ(likelihood_ratio(MixedFit{}, restricted).summary.problem.code, "fit_not_usable");
  EXPECT_EQ(mixed_contrast(restricted, {1, 2}).summary.problem.code, "lengths_differ");
  EXPECT_EQ(mixed_contrast(restricted, {0}).summary.problem.code, "all_zero");
  EXPECT_EQ(mixed_contrast(MixedFit{}, {}).summary.problem.code, "fit_not_usable");
  EXPECT_EQ(mixed_f_test(restricted, {}).summary.problem.code, "too_few");
  const auto smaller = fit_mixed(three_plots(), {.restricted = false});
  auto wider = three_plots();
  wider.fixed = {{1, 2, 2, 1, 1, 3}};
  const auto larger = fit_mixed(wider, {.restricted = false});
  const auto ratio = likelihood_ratio(smaller, larger);
  ASSERT_TRUE(ratio.summary.usable) << ratio.summary.message;
  EXPECT_EQ(ratio.df, 1);
  EXPECT_NEAR(ratio.statistic, 2 * (larger.log_likelihood - smaller.log_likelihood), 1e-8);
  EXPECT_EQ(likelihood_ratio(larger, smaller).summary.problem.code, "fits_differ");
}

} // namespace
