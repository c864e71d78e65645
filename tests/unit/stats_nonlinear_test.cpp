#include "baize/stats/distributions.h"
#include "baize/stats/least_squares.h"
#include "baize/stats/nonlinear_least_squares.h"
#include "unit/special.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace {

using namespace baize::stats;
using Values = std::vector<double>;
using special::kNan;

double line(const Values& b, std::size_t row) {
  return b[0] + b[1] * static_cast<double>(row);
}
double decay(const Values& b, std::size_t row) {
  return b[0] * std::exp(-b[1] * static_cast<double>(row));
}

// A line is fitted as by linear least squares, and its profile is the t interval.
TEST(NonlinearLeastSquares, ALineIsALine) {
  const Values y{1, 4, 6, 11, 12};
  const auto fit = nonlinear_least_squares(y, line, {0, 0});
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  const auto linear = least_squares({{1, {0}}, {4, {1}}, {6, {2}}, {11, {3}}, {12, {4}}});
  for (std::size_t k = 0; k < 2; ++k) {
    EXPECT_NEAR(fit.parameters[k].value, linear.coefficients[k].value, 1e-9);
    EXPECT_NEAR(fit.parameters[k].standard_error, linear.coefficients[k].standard_error, 1e-9);
    const auto profile = profile_interval(y, line, fit, k);
    ASSERT_TRUE(profile.summary.usable) << profile.summary.message;
    const double half = t_quantile(0.975, 3) * fit.parameters[k].standard_error;
    EXPECT_NEAR(profile.interval.low, fit.parameters[k].value - half, 1e-7);
    EXPECT_NEAR(profile.interval.high, fit.parameters[k].value + half, 1e-7);
  }
  EXPECT_EQ(fit.residual_df, 3);
  EXPECT_NEAR(fit.residual_ss, linear.residual_ss, 1e-10);
  EXPECT_NEAR(fit.fitted[2], 6.8, 1e-9);
}

// Pencil: y = b^2 with values 3 and 5: b = 2, slope 4 twice, s2 = 2, error 2 / (4 sqrt 2)
// x sqrt 2 / 2. Profile: b^2 = 4 +- t sqrt(s2 / 2), where that is above 0.
TEST(NonlinearLeastSquares, ASquareByPencil) {
  const Values y{3, 5};
  const CurveModel square = [](const Values& b, std::size_t) { return b[0] * b[0]; };
  const NonlinearOptions half{20000, 1e-9, 0.5};
  const auto fit = nonlinear_least_squares(y, square, {1}, half);
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_NEAR(fit.parameters[0].value, 2, 1e-9);
  EXPECT_NEAR(fit.residual_ss, 2, 1e-12);
  EXPECT_NEAR(fit.parameters[0].standard_error, 0.25, 1e-9);
  // t(0.75, 1) = 1: 4 +- 1.
  const auto profile = profile_interval(y, square, fit, 0, half);
  EXPECT_NEAR(profile.interval.low, std::sqrt(3), 1e-8);
  EXPECT_NEAR(profile.interval.high, std::sqrt(5), 1e-8);
}

// A curve that has all but ended: any faster decay fits as well.
TEST(ProfileInterval, IsOpenWhereTheDataSetNoEnd) {
  const Values y{10, 0.02, -0.01, 0.01, -0.02};
  const auto fit = nonlinear_least_squares(y, decay, {8, 1});
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  const auto profile = profile_interval(y, decay, fit, 1);
  ASSERT_TRUE(profile.summary.usable);
  EXPECT_GT(profile.interval.low, 4);
  EXPECT_TRUE(std::isinf(profile.interval.high));
}

TEST(NonlinearLeastSquares, RefusesInOneSentence) {
  const auto code = [](const Values& y, const Values& start, NonlinearOptions options = {}) {
    const auto fit = nonlinear_least_squares(y, decay, start, options);
    EXPECT_FALSE(fit.summary.usable);
    EXPECT_TRUE(fit.parameters.empty());
    return fit.summary.problem.code;
  };
  EXPECT_EQ(code({3, 2, 1}, {1, 1}, {0}), "option_out_of_range");
  EXPECT_EQ(code({3, 2, 1}, {1, 1}, {10, 1}), "option_out_of_range");
  EXPECT_EQ(code({3, 2, 1}, {1, 1}, {10, 1e-9, 1}), "option_out_of_range");
  EXPECT_EQ(code({3, 2}, {1, 1}), "too_few");
  EXPECT_EQ(code({3, 2, 1}, {}), "too_few");
  EXPECT_EQ(code({3, kNan, 1}, {1, 1}), "not_finite");
  EXPECT_EQ(code({3, 2, 1}, {1, kNan}), "not_finite");
  EXPECT_EQ(code({3, 2, 1}, {1, -1e6}), "not_finite");
  const auto stopped = nonlinear_least_squares({9, 4, 2, 1}, decay, {1, 5}, {1});
  EXPECT_EQ(stopped.summary.termination, Termination::not_converged);
  EXPECT_FALSE(stopped.summary.usable);
  const auto same = nonlinear_least_squares(
      {1, 2, 4, 3}, [](const Values& b, std::size_t) { return b[0] + b[1]; }, {1, 1});
  EXPECT_EQ(same.summary.problem.code, "singular_design");
  const auto idle = nonlinear_least_squares(
      {1, 2, 4, 3}, [](const Values& b, std::size_t) { return b[0]; }, {1, 1});
  EXPECT_EQ(idle.summary.problem.code, "singular_design");
  EXPECT_EQ(profile_interval({1, 2, 4, 3}, line, same, 0).summary.problem.code, "fit_not_usable");
  const auto fit = nonlinear_least_squares({9, 4, 2, 1}, decay, {8, 1});
  EXPECT_EQ(profile_interval({9, 4, 2, 1}, decay, fit, 2).summary.problem.code,
            "no_such_parameter");
}

RC_GTEST_PROP(NonlinearLaws, UnitsAndStartAreFree, ()) {
  const double rate = *rc::gen::inRange(20, 150) / 100.0;
  Values y;
  for (std::size_t row = 0; row < 8; ++row) {
    y.push_back(decay({10, rate}, row) + *rc::gen::inRange(-30, 31) / 100.0);
  }
  const auto before = nonlinear_least_squares(y, decay, {5, 0.5});
  for (double& value : y) {
    value *= 100;
  }
  const auto after = nonlinear_least_squares(y, decay, {2000, 1});
  RC_ASSERT(before.summary.usable && after.summary.usable);
  RC_ASSERT(std::fabs(after.parameters[0].value / 100 - before.parameters[0].value) < 1e-6);
  RC_ASSERT(std::fabs(after.parameters[1].value - before.parameters[1].value) < 1e-7);
  RC_ASSERT(std::fabs(after.parameters[1].standard_error - before.parameters[1].standard_error) <
            1e-7);
}

} // namespace
