#include "unit/speed_runs.h"

#include <gmock/gmock.h>

#include <limits>

namespace {

using namespace baize::speed;
using samples::back;
using samples::out;
using testing::HasSubstr;
using testing::IsEmpty;

std::string all(const std::vector<std::string_view>& warnings) {
  std::string text;
  for (const auto warning : warnings) {
    text += std::string(warning) + "\n";
  }
  return text;
}

TEST(SpotSpeed, ALevelSpotByPencil) {
  // Out 3.00 3.10 3.05: mean 3.05. Back 3.10 3.20 3.15: mean 3.15. Plain mean
  // 3.10; slope formula 2 * 3.05 * 3.15 / 6.20 = 3.09919...
  const auto spot = spot_speed({out({3.00, 3.10, 3.05}), back({3.10, 3.20, 3.15})});
  ASSERT_TRUE(spot);
  EXPECT_DOUBLE_EQ(spot->out->mean_m, 3.05);
  EXPECT_DOUBLE_EQ(spot->back->mean_m, 3.15);
  EXPECT_NEAR(spot->out->spread_m, 0.10, 1e-12);
  EXPECT_EQ(spot->out->rolls, 3);
  EXPECT_DOUBLE_EQ(spot->plain_mean_m, 3.10);
  EXPECT_NEAR(*spot->slope_corrected_m, 19.215 / 6.20, 1e-12);
  EXPECT_DOUBLE_EQ(spot->speed_m, spot->plain_mean_m);
  EXPECT_EQ(spot->slope_class, SlopeClass::gentle);
  EXPECT_FALSE(spot->directions_apart);
  EXPECT_THAT(spot->warnings, IsEmpty());
}

TEST(SpotSpeed, ASteepSpotIsWorkedOutAndWarnedOf) {
  // Up 185, down 981 cm: 2 * 185 * 981 / 1166 = 311.295 cm; the plain mean
  // would be 583 cm (common practice; case SL1 of the reference values).
  const auto spot = spot_speed({out({1.85, 1.85, 1.85}), back({9.81, 9.81, 9.81})});
  ASSERT_TRUE(spot);
  EXPECT_NEAR(spot->speed_m, 3.11295025728988, 1e-12);
  EXPECT_DOUBLE_EQ(spot->plain_mean_m, 5.83);
  EXPECT_EQ(spot->slope_class, SlopeClass::steep);
  EXPECT_TRUE(spot->directions_apart);
  EXPECT_THAT(all(spot->warnings), HasSubstr("Steep slope"));
  EXPECT_THAT(all(spot->warnings), HasSubstr("flatter place"));
  EXPECT_DOUBLE_EQ(spot->out->mean_m, 1.85) << "both raw directions are kept";
  EXPECT_DOUBLE_EQ(spot->back->mean_m, 9.81);
}

TEST(SpotSpeed, TheGapItselfIsStillWithin) {
  // 18 in apart exactly: plain mean. A millimetre more: slope formula.
  const auto within = spot_speed({out({3, 3, 3}), back({3.4572, 3.4572, 3.4572})});
  EXPECT_FALSE(within->directions_apart);
  EXPECT_DOUBLE_EQ(within->speed_m, within->plain_mean_m);
  const auto beyond = spot_speed({out({3, 3, 3}), back({3.4582, 3.4582, 3.4582})});
  EXPECT_TRUE(beyond->directions_apart);
  EXPECT_DOUBLE_EQ(beyond->speed_m, *beyond->slope_corrected_m);
}

TEST(SpotSpeed, BallsTooFarApart) {
  EXPECT_TRUE(spot_speed({out({3, 3.1, 3.2032})})->out->within_tolerance);
  const auto wide = spot_speed({out({3, 3.1, 3.2042})});
  EXPECT_FALSE(wide->out->within_tolerance);
  EXPECT_THAT(all(wide->warnings), HasSubstr("roll that direction again"));
}

TEST(SpotSpeed, OneDirectionOnlyIsSaid) {
  const auto spot = spot_speed({back({3.0, 3.1, 3.2})});
  EXPECT_TRUE(spot->one_direction_only);
  EXPECT_FALSE(spot->out);
  EXPECT_FALSE(spot->slope_corrected_m);
  EXPECT_FALSE(spot->ratio);
  EXPECT_FALSE(spot->slope_class);
  EXPECT_NEAR(spot->speed_m, 3.1, 1e-12);
  EXPECT_THAT(all(spot->warnings), HasSubstr("one direction only"));
}

TEST(SpotSpeed, WhatWasNotMeasuredIsNotZero) {
  auto runs = std::vector{out({3.0, 3.2}), back({3.1})};
  runs[0].rolls.emplace_back(); // rolled, not measured
  const auto spot = spot_speed(runs);
  EXPECT_EQ(spot->out->rolls, 2);
  EXPECT_NEAR(spot->out->mean_m, 3.1, 1e-12);
  EXPECT_THAT(all(spot->warnings), HasSubstr("Fewer than three rolls"));
  EXPECT_FALSE(spot_speed({}));
  runs = {out({})};
  runs[0].rolls.resize(3);
  EXPECT_FALSE(spot_speed(runs));
}

TEST(SpotSpeed, DistancesThatAreNoneAreLeftOut) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const double inf = std::numeric_limits<double>::infinity();
  const auto spot = spot_speed({out({nan, 3.0, 0.0, -1.0, inf})});
  EXPECT_EQ(spot->out->rolls, 1);
  EXPECT_DOUBLE_EQ(spot->speed_m, 3.0);
}

TEST(VisitSpeed, MeanOverSpots) {
  const auto visit =
      visit_speed({out({3, 3, 3}, "A"), back({3, 3, 3}, "A"), out({3.3, 3.3, 3.3}, "B"),
                   back({3.3, 3.3, 3.3}, "B"), out({}, "C")});
  ASSERT_TRUE(visit);
  EXPECT_EQ(visit->spots, 2) << "nothing was measured at C";
  EXPECT_NEAR(visit->speed_m, 3.15, 1e-12);
  const double one = spot_speed({out({3, 3, 3}), back({3, 3, 3})})->standard_error_m;
  EXPECT_NEAR(visit->standard_error_m, one / std::sqrt(2.0), 1e-12)
      << "sqrt(2 e^2) / 2: two spots of the same error";
  EXPECT_FALSE(visit->steep);
  EXPECT_FALSE(visit_speed({}));
}

TEST(VisitSpeed, OneSteepSpotMarksTheVisitAndWarnsOnce) {
  const auto visit = visit_speed(
      {out({2, 2, 2}, "A"), back({7, 7, 7}, "A"), out({2, 2, 2}, "B"), back({8, 8, 8}, "B")});
  EXPECT_TRUE(visit->steep);
  EXPECT_THAT(visit->warnings, testing::SizeIs(2));
}

} // namespace
