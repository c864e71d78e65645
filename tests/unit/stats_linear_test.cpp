#include "baize/stats/least_squares.h"
#include "baize/stats/one_way_anova.h"
#include "unit/special.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace {

using namespace baize::stats;
using Rows = std::vector<LeastSquaresRow>;
using Groups = std::vector<std::vector<double>>;
using special::kNan;

// Pencil: (0,1) (1,3) (2,4) (4,9): slope 69/35, constant 4/5; residual SS 36.75 -
// 69^2/140; slope's error sqrt(s2 4/35).
TEST(LeastSquares, ALineByPencil) {
  const auto fit = least_squares({{1, {0}}, {3, {1}}, {4, {2}}, {9, {4}}});
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_EQ(fit.summary.termination, Termination::done);
  EXPECT_NEAR(fit.coefficients[0].value, 0.8, 1e-14);
  EXPECT_NEAR(fit.coefficients[1].value, 69.0 / 35, 1e-14);
  const double regression = 69.0 * 69 / 140;
  const double residual = 34.75 - regression;
  EXPECT_NEAR(fit.residual_ss, residual, 1e-13);
  EXPECT_NEAR(fit.regression_ss, regression, 1e-13);
  EXPECT_NEAR(fit.coefficients[1].standard_error, std::sqrt(residual / 2 * 4 / 35), 1e-14);
  EXPECT_NEAR(fit.r_squared, regression / 34.75, 1e-14);
  EXPECT_NEAR(fit.f.value(), regression / (residual / 2), 1e-10);
  EXPECT_NEAR(fit.f_p.value(), fit.coefficients[1].p, 1e-13); // F is t squared
  EXPECT_NEAR(fit.fitted[3], 0.8 + 4 * 69.0 / 35, 1e-14);
  EXPECT_NEAR(fit.covariance[0][1], -1.75 * residual / 2 * 4 / 35, 1e-13);
}

TEST(LeastSquares, AConstantAloneIsTheMean) {
  const auto fit = least_squares({{1, {}}, {2, {}}, {6, {}}});
  ASSERT_TRUE(fit.summary.usable);
  EXPECT_DOUBLE_EQ(fit.coefficients[0].value, 3);
  EXPECT_NEAR(fit.coefficients[0].standard_error, std::sqrt(7.0 / 3), 1e-14);
  EXPECT_FALSE(fit.f);
}

TEST(LeastSquares, APerfectFitHasNoF) {
  const auto fit = least_squares({{1, {1}}, {2, {2}}, {3, {3}}}, {false});
  ASSERT_TRUE(fit.summary.usable);
  EXPECT_DOUBLE_EQ(fit.coefficients[0].value, 1);
  EXPECT_NEAR(fit.r_squared, 1, 1e-15);
  EXPECT_LT(fit.coefficients[0].p, 1e-9);
}

TEST(LeastSquares, RefusesInOneSentence) {
  const auto code = [](const Rows& rows, bool constant = true) {
    const auto fit = least_squares(rows, {constant});
    EXPECT_FALSE(fit.summary.usable);
    EXPECT_TRUE(fit.coefficients.empty());
    return fit.summary.problem.code;
  };
  EXPECT_EQ(code({}), "too_few");
  EXPECT_EQ(code({{1, {1}}, {2, {2}}}), "too_few");
  EXPECT_EQ(code({{1, {}}, {2, {}}}, false), "too_few");
  EXPECT_EQ(code({{1, {1}}, {2, {2, 3}}, {3, {4}}}), "lengths_differ");
  EXPECT_EQ(code({{1, {1}}, {kNan, {2}}, {3, {4}}}), "not_finite");
  EXPECT_EQ(code({{1, {1}}, {2, {kNan}}, {3, {4}}}), "not_finite");
  EXPECT_EQ(code({{1, {5}}, {2, {5}}, {3, {5}}}), "singular_design");
  EXPECT_EQ(code({{1, {0}}, {2, {0}}, {3, {0}}}, false), "singular_design");
  EXPECT_EQ(code({{1, {0.1, 0.3}}, {2, {0.2, 0.6}}, {3, {0.7, 2.1}}, {5, {0.9, 2.7}}}),
            "singular_design");
  EXPECT_EQ(code({{7, {1}}, {7, {2}}, {7, {3}}}), "all_equal");
  EXPECT_EQ(least_squares({{1, {1}}, {2, {kNan}}, {3, {4}}}).summary.message,
            "row 2: x is 'nan', but must be a finite number.");
}

// Pencil: groups 1 2 3, 2 4 6 and 9: means 2, 4, 9, grand 27/7; within 2 + 8 + 0,
// between 3 (13/7)^2 + 3 (1/7)^2 + (36/7)^2.
TEST(OneWayAnova, ByPencil) {
  const auto found = one_way_anova({{1, 2, 3}, {2, 4, 6}, {9}});
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_EQ(found.between_df, 2);
  EXPECT_EQ(found.within_df, 4);
  EXPECT_NEAR(found.within_ss, 10, 1e-14);
  EXPECT_NEAR(found.between_ss, 1806.0 / 49, 1e-13);
  EXPECT_NEAR(found.f, 1806.0 / 98 / 2.5, 1e-13);
  // Closed form for 2 degrees above: p = (1 + 2 F / 4)^-2.
  EXPECT_NEAR(found.p, std::pow(1 + found.f / 2, -2), 1e-13);
  EXPECT_EQ(found.means, (std::vector<double>{2, 4, 9}));
}

TEST(OneWayAnova, RefusesInOneSentence) {
  const auto code = [](const Groups& groups) {
    const auto found = one_way_anova(groups);
    EXPECT_FALSE(found.summary.usable);
    return found.summary.problem.code;
  };
  EXPECT_EQ(code({}), "too_few");
  EXPECT_EQ(code({{1, 2}}), "too_few");
  EXPECT_EQ(code({{1, 2}, {}}), "too_few");
  EXPECT_EQ(code({{1}, {2}}), "too_few");
  EXPECT_EQ(code({{1, 2}, {kNan}}), "not_finite");
  EXPECT_EQ(code({{1, 1}, {2, 2}}), "no_spread");
  EXPECT_EQ(code({{0.1, 0.1}, {0.1, 0.1}}), "no_spread");
  EXPECT_EQ(code({{1e200, -1e200}, {1e200, 3}}), "too_large");
  EXPECT_EQ(one_way_anova({{1, 2}, {1, kNan}}).summary.message,
            "group 2 value 2: value is 'nan', but must be a finite number.");
}

Rows drawn() {
  const auto size = *rc::gen::inRange<std::size_t>(0, 30);
  Rows rows{{1, {0, 2}}, {3, {1, 5}}, {4, {2, 1}}, {9, {4, 3}}};
  for (std::size_t i = 0; i < size; ++i) {
    rows.push_back({*rc::gen::inRange(-50, 50) / 4.0,
                    {*rc::gen::inRange(0, 9) * 1.0, *rc::gen::inRange(-99, 99) / 8.0}});
  }
  return rows;
}

RC_GTEST_PROP(LeastSquaresLaws, ResidualsAreAtRightAnglesToTheColumns, ()) {
  const Rows rows = drawn();
  const auto fit = least_squares(rows);
  RC_ASSERT(fit.summary.usable);
  double sums[3] = {};
  double squares = 0;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const double residual = rows[i].y - fit.fitted[i];
    sums[0] += residual;
    sums[1] += residual * rows[i].x[0];
    sums[2] += residual * rows[i].x[1];
    squares += residual * residual;
  }
  for (const double sum : sums) {
    RC_ASSERT(std::fabs(sum) < 1e-9);
  }
  RC_ASSERT(std::fabs(squares - fit.residual_ss) < 1e-9);
}

RC_GTEST_PROP(LeastSquaresLaws, OrderUnitAndOriginAreFree, ()) {
  Rows rows = drawn();
  const auto before = least_squares(rows);
  std::reverse(rows.begin(), rows.end());
  for (auto& row : rows) {
    row.y = 10 * row.y + 300;
    row.x[0] *= 24;
    row.x[1] += 40;
  }
  const auto after = least_squares(rows);
  RC_ASSERT(before.summary.usable && after.summary.usable);
  RC_ASSERT(std::fabs(after.r_squared - before.r_squared) < 1e-11);
  RC_ASSERT(std::fabs(after.coefficients[1].value * 2.4 - before.coefficients[1].value) < 1e-10);
  RC_ASSERT(std::fabs(after.coefficients[2].value / 10 - before.coefficients[2].value) < 1e-10);
  RC_ASSERT(std::fabs(after.coefficients[2].standard_error / 10 -
                      before.coefficients[2].standard_error) < 1e-10);
}

RC_GTEST_PROP(OneWayAnovaLaws, ItIsTheRegressionOnTheGroups, ()) {
  Groups groups{{1, 4}, {2}, {3}};
  Rows rows{{1, {0, 0}}, {4, {0, 0}}, {2, {1, 0}}, {3, {0, 1}}};
  const auto size = *rc::gen::inRange<std::size_t>(1, 30);
  for (std::size_t i = 0; i < size; ++i) {
    const auto group = *rc::gen::inRange<std::size_t>(0, 3);
    const double y = *rc::gen::inRange(-50, 50) / 4.0;
    groups[group].push_back(y);
    rows.push_back({y, {group == 1 ? 1.0 : 0.0, group == 2 ? 1.0 : 0.0}});
  }
  const auto anova = one_way_anova(groups);
  const auto fit = least_squares(rows);
  RC_ASSERT(anova.summary.usable && fit.summary.usable);
  RC_ASSERT(std::fabs(anova.f - fit.f.value()) <= 1e-9 * (1 + anova.f));
  RC_ASSERT(std::fabs(anova.p - fit.f_p.value()) < 1e-10);
  RC_ASSERT(std::fabs(anova.within_ss - fit.residual_ss) < 1e-9);
}

RC_GTEST_PROP(OneWayAnovaLaws, AddingAConstantOrAnotherUnitKeepsF, ()) {
  Groups groups{{1, 4}, {2, 3, 7}};
  const auto size = *rc::gen::inRange<std::size_t>(1, 30);
  for (std::size_t i = 0; i < size; ++i) {
    groups[i % 2].push_back(*rc::gen::inRange(-50, 50) / 4.0);
  }
  const auto before = one_way_anova(groups);
  for (auto& group : groups) {
    std::reverse(group.begin(), group.end());
    for (double& value : group) {
      value = 10 * value + 1000;
    }
  }
  std::reverse(groups.begin(), groups.end());
  const auto after = one_way_anova(groups);
  RC_ASSERT(std::fabs(before.f - after.f) <= 1e-9 * (1 + before.f));
}

} // namespace
