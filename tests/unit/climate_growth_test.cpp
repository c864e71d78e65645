#include "baize/climate/growth.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <limits>

namespace baize::climate {
namespace {

units::Day day(int month, int d) {
  return *units::make_day(2024, month, d);
}

WeatherDay with_range(units::Day d, double tmin, double tmax) {
  WeatherDay result;
  result.day = d;
  result.tmin_c = tmin;
  result.tmax_c = tmax;
  return result;
}

TEST(MeanTemperature, StationsOwnMeanComesFirst) {
  WeatherDay d = with_range(day(5, 1), 10, 20);
  EXPECT_EQ(mean_temperature_c(d), 15.0);
  d.tmean_c = 14.2;
  EXPECT_EQ(mean_temperature_c(d), 14.2);
}

TEST(MeanTemperature, HalfADayIsNoMean) {
  WeatherDay d = with_range(day(5, 1), 10, 20);
  d.tmax_c.reset();
  EXPECT_FALSE(mean_temperature_c(d));
  EXPECT_FALSE(growth_potential(d, kCoolSeason));
}

TEST(GrowthPotential, PlateauHoldsAboveTheOptimumOnly) {
  const GrowthOptions plateau{31, 7, true};
  EXPECT_EQ(growth_potential(31, plateau), 1.0);
  EXPECT_EQ(growth_potential(38, plateau), 1.0);
  EXPECT_EQ(growth_potential(24, plateau), growth_potential(24, kWarmSeason));
}

TEST(GrowthPotential, IsAShareAndHighestAtTheOptimum) {
  rc::check([] {
    const double t = *rc::gen::inRange(-900, 600) / 10.0;
    const GrowthOptions options{*rc::gen::inRange(0, 500) / 10.0, *rc::gen::inRange(5, 300) / 10.0,
                                *rc::gen::arbitrary<bool>()};
    RC_ASSERT(options.valid());
    const double gp = growth_potential(t, options);
    RC_ASSERT(gp >= 0 && gp <= growth_potential(options.optimum_c, options));
    RC_ASSERT(growth_potential(options.optimum_c, options) == 1.0);
  });
}

TEST(GrowthOptions, ProblemNamesFieldValueAndRange) {
  const auto spread = GrowthOptions{20, 0, false}.problem();
  ASSERT_TRUE(spread);
  EXPECT_EQ(units::sentence(*spread), "spread_c is '0', but must be 0.5 to 30 degrees C.");
  const auto optimum = GrowthOptions{67.5, 10, false}.problem(); // degrees F by mistake
  ASSERT_TRUE(optimum);
  EXPECT_EQ(optimum->code, "growth_options_out_of_range");
  EXPECT_EQ(optimum->value, "67.5");
  GrowthOptions none;
  none.optimum_c = std::numeric_limits<double>::quiet_NaN();
  ASSERT_TRUE(none.problem());
  EXPECT_EQ(none.problem()->value, "not finite");
  EXPECT_TRUE(kCoolSeason.valid());
  EXPECT_TRUE(kWarmSeason.valid());
}

TEST(GrowthDays, CountsAfterTheFirstDayUpToTheLast) {
  Weather weather;
  for (int d = 1; d <= 5; ++d) {
    weather[day(5, d)] = with_range(day(5, d), 15, 25); // mean at the optimum: 1 a day
  }
  const auto sum = growth_days(weather, day(5, 1), day(5, 4), kCoolSeason);
  EXPECT_EQ(sum.sum, 3.0);
  EXPECT_EQ(sum.days, 3);
  EXPECT_TRUE(sum.complete());
}

TEST(GrowthDays, MissingDaysAreCountedNotFilled) {
  Weather weather;
  weather[day(5, 2)] = with_range(day(5, 2), 15, 25);
  weather[day(5, 3)].day = day(5, 3); // rain only, say
  const auto sum = growth_days(weather, day(5, 1), day(5, 4), kCoolSeason);
  EXPECT_EQ(sum.sum, 1.0);
  EXPECT_EQ(sum.days, 3);
  EXPECT_EQ(sum.missing, 2);
  EXPECT_FALSE(sum.complete());
}

TEST(GrowthDays, NothingLiesBetweenADayAndItselfOrBackwards) {
  Weather weather;
  weather[day(5, 2)] = with_range(day(5, 2), 15, 25);
  EXPECT_EQ(growth_days(weather, day(5, 2), day(5, 2), kCoolSeason).days, 0);
  const auto backwards = growth_days(weather, day(5, 9), day(5, 1), kCoolSeason);
  EXPECT_EQ(backwards.days, 0);
  EXPECT_EQ(backwards.missing, 0);
  EXPECT_EQ(backwards.sum, 0.0);
}

TEST(GrowthDays, AddUpOverNeighbouringPeriods) {
  rc::check([] {
    Weather weather;
    for (int d = 0; d < 60; ++d) {
      if (*rc::gen::inRange(0, 4) != 0) {
        const units::Day at = day(4, 1) + d;
        const double low = *rc::gen::inRange(-10, 25);
        weather[at] = with_range(at, low, low + 8);
      }
    }
    const units::Day a = day(4, 1) + *rc::gen::inRange(0, 20);
    const units::Day b = a + *rc::gen::inRange(0, 20);
    const units::Day c = b + *rc::gen::inRange(0, 20);
    const auto ab = growth_days(weather, a, b, kCoolSeason);
    const auto bc = growth_days(weather, b, c, kCoolSeason);
    const auto ac = growth_days(weather, a, c, kCoolSeason);
    RC_ASSERT(ab.days + bc.days == ac.days);
    RC_ASSERT(ab.missing + bc.missing == ac.missing);
    RC_ASSERT(std::abs(ab.sum + bc.sum - ac.sum) < 1e-9);
  });
}

} // namespace
} // namespace baize::climate
