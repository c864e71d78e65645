#include "baize/climate/evapotranspiration.h"
#include "baize/climate/humidity.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <limits>

namespace baize::climate {
namespace {

/// FAO-56 example 18 (Uccle, 6 July), everything measured.
Et0Inputs uccle() {
  Et0Inputs in;
  in.day_of_year = 187;
  in.latitude_deg = 50.8;
  in.elevation_m = 100;
  in.tmin_c = 12.3;
  in.tmax_c = 21.5;
  in.humidity_max_pct = 84;
  in.humidity_min_pct = 63;
  in.wind_m_s = 10 / 3.6;
  in.wind_height_m = 10;
  in.sunshine_h = 9.25;
  return in;
}

void expect_refused(const Et0Inputs& in, const std::string& code, const std::string& field) {
  const auto result = reference_et0(in);
  ASSERT_FALSE(result);
  EXPECT_EQ(result.error().code, code);
  EXPECT_EQ(result.error().field, field);
}

TEST(Et0, RefusesWhereNothingCanStandForAnInput) {
  auto in = uccle();
  in.latitude_deg.reset();
  expect_refused(in, "missing", "latitude_deg");
  in = uccle();
  in.tmin_c.reset();
  expect_refused(in, "missing", "tmin_c");
  in = uccle();
  in.tmax_c.reset();
  expect_refused(in, "missing", "tmax_c");
}

TEST(Et0, RefusesWhatCannotBe) {
  auto in = uccle();
  in.day_of_year = 367;
  expect_refused(in, "out_of_range", "day_of_year");
  in = uccle();
  in.tmax_c = 70.7; // degrees F by mistake
  expect_refused(in, "out_of_range", "tmax_c");
  in = uccle();
  in.humidity_max_pct = 104;
  expect_refused(in, "out_of_range", "humidity_max_pct");
  in = uccle();
  in.wind_m_s = -1;
  expect_refused(in, "out_of_range", "wind_m_s");
  in = uccle();
  in.wind_height_m = 0.05; // the logarithm would be negative
  expect_refused(in, "out_of_range", "wind_height_m");
  in = uccle();
  in.solar_mj_m2 = std::numeric_limits<double>::quiet_NaN();
  expect_refused(in, "out_of_range", "solar_mj_m2");
}

TEST(Et0, RefusesSwappedTemperaturesAndPolarNight) {
  auto in = uccle();
  in.tmin_c = 25;
  expect_refused(in, "swapped", "tmin_c");
  EXPECT_EQ(units::sentence(reference_et0(in).error()),
            "tmin_c is '25', but must be no higher than tmax_c, which is 21.5.");
  in = uccle();
  in.latitude_deg = 80;
  in.day_of_year = 355;
  expect_refused(in, "no_daylight", "latitude_deg");
}

TEST(Et0, RefusesOptionsOutOfTheirRange) {
  Et0Options options;
  options.temperature_range_coefficient = 16;
  const auto result = reference_et0(uccle(), options);
  ASSERT_FALSE(result);
  EXPECT_EQ(result.error().code, "et0_options_out_of_range");
  EXPECT_EQ(result.error().field, "temperature_range_coefficient");
  options = {};
  options.clouds = {0.8, 0.5};
  EXPECT_FALSE(options.valid());
  EXPECT_TRUE(Et0Options{}.valid());
}

TEST(Et0, MoistureIsTakenFromTheBestThatWasGiven) {
  auto in = uccle();
  in.humidity_mean_pct = 70;
  EXPECT_EQ(reference_et0(in)->moisture_from, MoistureFrom::humidity_max_and_min);
  in.dry_bulb_c = 20;
  in.wet_bulb_c = 15;
  EXPECT_EQ(reference_et0(in)->moisture_from, MoistureFrom::psychrometer);
  in.dew_point_c = 12;
  EXPECT_EQ(reference_et0(in)->moisture_from, MoistureFrom::dew_point);
  in.vapour_pressure_kpa = 1.4;
  EXPECT_EQ(reference_et0(in)->moisture_from, MoistureFrom::vapour_pressure);
  in = uccle();
  in.humidity_min_pct.reset();
  const auto high_only = reference_et0(in);
  EXPECT_EQ(high_only->moisture_from, MoistureFrom::humidity_max);
  EXPECT_DOUBLE_EQ(high_only->vapour_pressure_kpa,
                   0.84 * saturation_vapour_pressure_kpa(12.3)); // FAO-56 eq. 18
  in.humidity_max_pct.reset();
  in.humidity_mean_pct = 70;
  EXPECT_EQ(reference_et0(in)->moisture_from, MoistureFrom::humidity_mean);
  EXPECT_TRUE(reference_et0(in)->measured());
}

TEST(Et0, EveryReplacementIsNamedWithWhatWasUsed) {
  Et0Inputs in;
  in.day_of_year = 187;
  in.latitude_deg = 50.8;
  in.tmin_c = 12.3;
  in.tmax_c = 21.5;
  Et0Options dry;
  dry.dew_point_below_tmin_c = 2;
  const auto result = reference_et0(in, dry);
  ASSERT_TRUE(result);
  ASSERT_EQ(result->replaced.size(), 4U);
  EXPECT_EQ(result->replaced[0].field, "elevation_m");
  EXPECT_EQ(result->replaced[1].field, "dew_point_c");
  EXPECT_DOUBLE_EQ(result->replaced[1].used, 10.3);
  EXPECT_EQ(result->replaced[2].field, "solar_mj_m2");
  EXPECT_DOUBLE_EQ(result->replaced[2].used, result->solar);
  EXPECT_EQ(result->replaced[3].field, "wind_m_s");
  EXPECT_EQ(result->replaced[3].used, 2.0);
}

TEST(Et0, WindWithoutAHeightAndStillAirAreNamed) {
  auto in = uccle();
  in.wind_height_m.reset();
  auto result = reference_et0(in);
  ASSERT_EQ(result->replaced.size(), 1U);
  EXPECT_EQ(result->replaced[0].field, "wind_height_m");
  EXPECT_DOUBLE_EQ(result->wind_2m_m_s, 10 / 3.6);
  in.wind_m_s = 0.1;
  in.wind_height_m = 2;
  result = reference_et0(in);
  ASSERT_EQ(result->replaced.size(), 1U);
  EXPECT_EQ(result->replaced[0].field, "wind_m_s");
  EXPECT_EQ(result->wind_2m_m_s, 0.5);
}

TEST(Et0, RadiationFromAWideRangeStaysUnderTheClearSky) {
  Et0Inputs in;
  in.day_of_year = 187;
  in.latitude_deg = 33;
  in.elevation_m = 300;
  in.tmin_c = 5;
  in.tmax_c = 40;
  const auto result = reference_et0(in);
  EXPECT_DOUBLE_EQ(result->solar, result->clear_sky);
}

TEST(Et0, SoutherlyJanuaryIsSummer) {
  auto in = uccle();
  in.day_of_year = 15;
  in.latitude_deg = -38;
  const double january = reference_et0(in)->et0_mm;
  in.day_of_year = 196;
  EXPECT_GT(january, 1.5 * reference_et0(in)->et0_mm);
}

TEST(Et0, IsFiniteWhereverItIsGiven) {
  rc::check([] {
    const auto maybe = [](int low, int high) -> std::optional<double> {
      if (*rc::gen::arbitrary<bool>()) {
        return *rc::gen::inRange(low * 10, high * 10 + 1) / 10.0;
      }
      return std::nullopt;
    };
    Et0Inputs in;
    in.day_of_year = *rc::gen::inRange(1, 367);
    in.latitude_deg = *rc::gen::inRange(-90, 91);
    in.elevation_m = maybe(-500, 9000);
    in.tmin_c = *rc::gen::inRange(-90, 60);
    in.tmax_c = *in.tmin_c + *rc::gen::inRange(0, static_cast<int>(60 - *in.tmin_c) + 1);
    in.dew_point_c = maybe(-90, 60);
    in.dry_bulb_c = maybe(-90, 60);
    in.wet_bulb_c = maybe(-90, 60);
    in.humidity_max_pct = maybe(0, 100);
    in.humidity_min_pct = maybe(0, 100);
    in.humidity_mean_pct = maybe(0, 100);
    in.solar_mj_m2 = maybe(0, 60);
    in.sunshine_h = maybe(0, 24);
    in.wind_m_s = maybe(0, 115);
    in.wind_height_m = maybe(1, 100);
    if (const auto result = reference_et0(in)) {
      RC_ASSERT(std::isfinite(result->et0_mm));
      RC_ASSERT(result->vapour_pressure_kpa >= 0);
    } else {
      RC_ASSERT(result.error().code == "no_daylight");
    }
  });
}

TEST(HourlyEt0, NightNeedsTheEveningsCloudRatio) {
  HourInputs in;
  in.clock.latitude_deg = 16;
  in.clock.day_of_year = 274;
  in.clock.mid_hour = 2.5;
  in.temperature_c = 28;
  in.humidity_pct = 90;
  const auto refused = reference_et0(in);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().field, "cloud_ratio");
  in.cloud_ratio = 0.8;
  const auto night = reference_et0(in);
  ASSERT_TRUE(night);
  EXPECT_EQ(night->extraterrestrial, 0.0);
  EXPECT_DOUBLE_EQ(night->soil_heat, 0.5 * night->net); // FAO-56 eq. 46
  EXPECT_LT(night->net, 0);
}

TEST(HourlyEt0, RefusesAnythingButAnHour) {
  HourInputs in;
  in.clock.length_h = 0.5;
  const auto refused = reference_et0(in);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().field, "length_h");
}

} // namespace
} // namespace baize::climate
