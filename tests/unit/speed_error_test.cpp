// The standard error, by pencil, and what follows from it.
#include "unit/speed_runs.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace {

using namespace baize::speed;
using samples::back;
using samples::out;

TEST(StandardError, FewRollsStandOnThePriorAlone) {
  // One roll each way, sd 0.10: variance of the mean 0.01 (1/4 + 1/4) = 0.005.
  // Two balls over the line: bias 0.005 * (2 - 1) / 2 = 0.0025.
  const auto spot = spot_speed({out({3.0}), back({3.2})});
  EXPECT_NEAR(spot->standard_error_m, std::sqrt(0.005 + 0.0025 * 0.0025), 1e-12);
}

TEST(StandardError, FullRunsShareWithThePrior) {
  // Out 2.9 3.0 3.1, back 3.1 3.2 3.3: each SS 0.02, 2 degrees of freedom.
  // s2 = (4 * 0.01 + 0.04) / (4 + 4) = 0.01. Mean of two means of three: s2 (1/4)
  // (1/3 + 1/3) = 0.01 / 6. Six balls: bias 0.005 * 5 / 2 = 0.0125.
  const auto spot = spot_speed({out({2.9, 3.0, 3.1}), back({3.1, 3.2, 3.3})});
  EXPECT_NEAR(spot->standard_error_m, std::sqrt(0.01 / 6 + 0.0125 * 0.0125), 1e-12);
}

TEST(StandardError, TwoRollsInADirectionAddNothingToTheVariance) {
  // SS of 3.0 and 3.4 is 0.08, but two rolls are too few to tell.
  // 0.01 (1/4) (1/2 + 1/2) = 0.0025; four balls: bias 0.0075.
  const auto spot = spot_speed({out({3.0, 3.4}), back({3.2, 3.2})});
  EXPECT_NEAR(spot->standard_error_m, std::sqrt(0.0025 + 0.0075 * 0.0075), 1e-12);
}

TEST(StandardError, OnASlopeItGoesThroughTheFormula) {
  // U 2, D 4: slopes 2 (4/6)^2 = 8/9 and 2 (2/6)^2 = 2/9. No scatter:
  // s2 = 0.04 / 8 = 0.005. Random: 0.005 (64/81 + 4/81) / 3 = 0.005 * 68 / 243.
  // Bias 0.0125 (8/9 + 2/9) = 0.0125 * 10 / 9.
  const auto spot = spot_speed({out({2, 2, 2}), back({4, 4, 4})});
  const double bias = 0.0125 * 10 / 9;
  EXPECT_NEAR(spot->standard_error_m, std::sqrt(0.005 * 68 / 243 + bias * bias), 1e-12);
}

TEST(StandardError, OneDirection) {
  // s2 = (0.04 + 0.02) / 6 = 0.01; over 3 rolls; bias 0.005 * 2 / 2.
  const auto spot = spot_speed({out({2.9, 3.0, 3.1})});
  EXPECT_NEAR(spot->standard_error_m, std::sqrt(0.01 / 3 + 0.005 * 0.005), 1e-12);
}

TEST(Change, ByPencil) {
  // Errors 0.03 and 0.04: 0.05 together, 1.96 * 0.05 = 0.098.
  VisitSpeed a;
  a.speed_m = 3.00;
  a.standard_error_m = 0.03;
  VisitSpeed b;
  b.speed_m = 3.10;
  b.standard_error_m = 0.04;
  const auto longer = change(a, b);
  EXPECT_NEAR(longer.difference_m, 0.10, 1e-12);
  EXPECT_NEAR(longer.low_m, 0.10 - 0.0979982, 1e-6);
  EXPECT_NEAR(longer.high_m, 0.10 + 0.0979982, 1e-6);
  EXPECT_TRUE(longer.real);
  b.speed_m = 3.09;
  EXPECT_FALSE(change(a, b).real) << "0.09 lies within 0.098";
  b.speed_m = 2.90;
  EXPECT_TRUE(change(a, b).real) << "shorter is a change, too";
}

TEST(Options, RefusesWhatMakesNoSense) {
  EXPECT_TRUE(Options{}.valid());
  const auto spoilt = [](double Options::* field, double value) {
    Options options;
    options.*field = value;
    return options;
  };
  const double nan = std::numeric_limits<double>::quiet_NaN();
  for (const auto field : {&Options::run_spread_m, &Options::direction_gap_m, &Options::roll_sd_m,
                           &Options::line_drift_m}) {
    for (const double bad : {nan, -0.01, 11.0}) {
      const auto options = spoilt(field, bad);
      ASSERT_TRUE(options.problem());
      EXPECT_EQ(options.problem()->code, "option_out_of_range");
      EXPECT_FALSE(spot_speed({out({3})}, options));
      EXPECT_FALSE(visit_speed({out({3})}, options));
    }
  }
  EXPECT_FALSE(spoilt(&Options::roll_sd_m, 0).valid());
  EXPECT_TRUE(spoilt(&Options::line_drift_m, 0).valid());
}

} // namespace
