#include "baize/stats/ordinal.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace {

using namespace baize::stats;

// Pencil: without covariates the thresholds are the quantiles of the shares 1/4 and
// 3/4, and log L = 2 log 1/4 + 4 log 1/2 + 2 log 1/4. The error of a logit of share
// p of n is 1 / sqrt(n p (1 - p)).
TEST(Ordinal, SharesAloneByPencil) {
  const auto fit = fit_ordinal({{5, 5, 6, 6, 6, 6, 7, 7}, {}});
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  ASSERT_EQ(fit.thresholds.size(), 2U);
  EXPECT_EQ(fit.thresholds[0].below, 5);
  EXPECT_EQ(fit.thresholds[0].above, 6);
  EXPECT_NEAR(fit.thresholds[0].value, -std::log(3), 1e-10);
  EXPECT_NEAR(fit.thresholds[1].value, std::log(3), 1e-10);
  EXPECT_NEAR(fit.thresholds[0].standard_error, 1 / std::sqrt(8.0 * 3 / 16), 1e-9);
  EXPECT_NEAR(fit.log_likelihood, 4 * std::log(0.25) + 4 * std::log(0.5), 1e-12);
  const auto shares = ordinal_probabilities(fit, {});
  ASSERT_EQ(shares.size(), 3U);
  EXPECT_NEAR(shares[1], 0.5, 1e-10);
}

// Pencil: two categories and a covariate of 0 and 1 are a table of two by two: odds
// of the higher one 1/3 and 3/1, so the coefficient is log 9, its error
// sqrt(1/1 + 1/3 + 1/3 + 1/1).
TEST(Ordinal, TwoByTwoByPencil) {
  const auto fit = fit_ordinal({{0, 0, 0, 1, 0, 1, 1, 1}, {{0, 0, 0, 0, 1, 1, 1, 1}}});
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_NEAR(fit.coefficients[0].value, std::log(9), 1e-9);
  EXPECT_NEAR(fit.coefficients[0].standard_error, std::sqrt(2 + 2.0 / 3), 1e-8);
  EXPECT_NEAR(fit.thresholds[0].value, std::log(3), 1e-9);
  EXPECT_NEAR(fit.likelihood_ratio,
              2 * (2 * std::log(0.25) + 6 * std::log(0.75) - 8 * std::log(0.5)), 1e-9);
  EXPECT_NEAR(ordinal_probabilities(fit, {1})[1], 0.75, 1e-10);
}

TEST(Ordinal, UnusedCategoriesAreNamed) {
  const auto fit = fit_ordinal({{5, 5, 7, 7, 9, 9}, {}, {}, {5, 6, 7, 8, 9}});
  ASSERT_TRUE(fit.summary.usable);
  EXPECT_EQ(fit.unused, (std::vector<int>{6, 8}));
  EXPECT_EQ(fit.thresholds.size(), 2U);
  EXPECT_NE(fit.summary.message.find("6, 8"), std::string::npos) << fit.summary.message;
}

TEST(Ordinal, AWeightIsThatManyRows) {
  const auto one = fit_ordinal({{1, 2, 2, 3, 1, 3}, {{0, 1, 0, 1, 1, 0}}, {2, 1, 3, 2, 0, 1}});
  const auto all = fit_ordinal({{1, 1, 2, 2, 2, 2, 3, 3, 3}, {{0, 0, 1, 0, 0, 0, 1, 1, 0}}});
  ASSERT_TRUE(one.summary.usable) << one.summary.message;
  ASSERT_TRUE(all.summary.usable) << all.summary.message;
  EXPECT_NEAR(one.coefficients[0].value, all.coefficients[0].value, 1e-9);
  EXPECT_NEAR(one.deviance, all.deviance, 1e-10);
}

std::string code(const OrdinalData& data, const OrdinalOptions& options = {}) {
  const auto fit = fit_ordinal(data, options);
  EXPECT_FALSE(fit.summary.usable);
  EXPECT_TRUE(ordinal_probabilities(fit, {0}).empty());
  return fit.summary.problem.code;
}

TEST(Ordinal, Refusals) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_EQ(code({{1}, {}}), "too_few");
  EXPECT_EQ(code({{1, 2, 3}, {{1, 2}}}), "lengths_differ");
  EXPECT_EQ(code({{1, 2, 3}, {{1, 2, nan}}}), "not_finite");
  EXPECT_EQ(code({{1, 2, 3}, {}, {1, 2}}), "lengths_differ");
  EXPECT_EQ(code({{1, 2, 3}, {}, {1, -2, 1}}), "below_zero");
  EXPECT_EQ(code({{1, 2, 3}, {}, {}, {1, 2}}), "not_in_scale");
  EXPECT_EQ(code({{1, 2, 3}, {}}, {.max_iterations = 0}), "option_out_of_range");
  EXPECT_EQ(code({{4, 4, 4}, {}}), "one_category");
  EXPECT_EQ(code({{1, 2, 1}, {{3, 3, 3}}}), "singular_design");
  EXPECT_EQ(code({{1, 2, 1, 2}, {{1, 2, 3, 4}, {3, 5, 7, 9}}}), "singular_design");
}

TEST(Ordinal, SeparationIsSaid) {
  EXPECT_EQ(code({{1, 1, 2, 2, 3, 3}, {{1, 2, 3, 4, 5, 6}}}), "separated");
  // The lowest only without, the highest only with the covariate.
  EXPECT_EQ(code({{1, 2, 2, 3, 3}, {{0, 1, 0, 1, 1}}}), "separated");
  // Every row with the covariate is in the highest category.
  EXPECT_EQ(code({{1, 2, 3, 1, 2, 3, 3, 3}, {{0, 0, 0, 0, 0, 0, 1, 1}}}), "separated");
  EXPECT_EQ(
      code({{1, 2, 3, 1, 2, 3, 3, 3}, {{0, 0, 0, 0, 0, 0, 1, 1}}}, {.link = OrdinalLink::probit}),
      "separated");
}

} // namespace
