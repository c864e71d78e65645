#include "baize/climate/radiation.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>

namespace baize::climate {
namespace {

TEST(Radiation, SeasonsAreTurnedRoundInTheSouth) {
  EXPECT_GT(extraterrestrial_radiation(52, 172), 3 * extraterrestrial_radiation(52, 355));
  EXPECT_GT(extraterrestrial_radiation(-38, 355), 2 * extraterrestrial_radiation(-38, 172));
  EXPECT_GT(daylight_hours(-38, 355), 14);
  EXPECT_LT(daylight_hours(-38, 172), 10);
}

TEST(Radiation, DaylightNorthAndSouthMakeOneDay) {
  rc::check([] {
    const double latitude = *rc::gen::inRange(-900, 901) / 10.0;
    const int day = *rc::gen::inRange(1, 367);
    RC_ASSERT(std::abs(daylight_hours(latitude, day) + daylight_hours(-latitude, day) - 24) < 1e-9);
  });
}

TEST(Radiation, PolarNightAndMidnightSun) {
  EXPECT_EQ(extraterrestrial_radiation(80, 355), 0.0);
  EXPECT_EQ(daylight_hours(80, 355), 0.0);
  EXPECT_DOUBLE_EQ(daylight_hours(80, 172), 24.0);
  EXPECT_EQ(sunset_hour_angle(80, 172), std::numbers::pi);
}

TEST(Radiation, TwentyFourHoursMakeTheDay) {
  // The hourly integral (eq. 28) over all hours is the daily one (eq. 21).
  rc::check([] {
    SunClock clock;
    clock.latitude_deg = *rc::gen::inRange(-850, 851) / 10.0;
    clock.day_of_year = *rc::gen::inRange(1, 367);
    // Solar noon at twelve, so that no hour runs over midnight of the sun.
    double sum = 0;
    for (int hour = 0; hour < 24; ++hour) {
      SunClock part = clock;
      part.mid_hour = hour + 0.5;
      const double b = 2 * std::numbers::pi * (clock.day_of_year - 81) / 364;
      const double season = 0.1645 * std::sin(2 * b) - 0.1255 * std::cos(b) - 0.025 * std::sin(b);
      part.mid_hour -= season;
      sum += extraterrestrial_radiation(part);
    }
    const double whole = extraterrestrial_radiation(clock.latitude_deg, clock.day_of_year);
    RC_ASSERT(std::abs(sum - whole) < 1e-6);
  });
}

TEST(Radiation, CloudRatioStaysInsideItsLimits) {
  EXPECT_EQ(limited_cloud_ratio(40, 30), 1.0);
  EXPECT_EQ(limited_cloud_ratio(3, 30), 0.1);
  EXPECT_EQ(limited_cloud_ratio(3, 30, kAsceClouds), 0.3);
  EXPECT_EQ(limited_cloud_ratio(15, 30, kAsceClouds), 0.5);
}

TEST(Radiation, SoilTakesMoreOfTheNightsBalance) {
  // FAO-56 eq. 45 and 46.
  EXPECT_DOUBLE_EQ(hourly_soil_heat(2, true), 0.2);
  EXPECT_DOUBLE_EQ(hourly_soil_heat(-0.2, false), -0.1);
}

} // namespace
} // namespace baize::climate
