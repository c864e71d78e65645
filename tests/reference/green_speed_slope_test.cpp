// The slope formula 2UD/(U+D): course rating manual (read); first in Brede AD
// (1990) Green Section Record 28(6):10-12 and (1991) Agronomy Journal
// 83:425-426 (from memory). Case SL1 is a published measurement (common
// practice, no source); the others are computed from the formula.
#include "baize/speed/green_speed.h"
#include "reference/green_speed_data.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace baize;
using namespace baize::speed;

units::Length length(double value, const std::string& unit) {
  return unit == "cm"   ? units::from_centimetres(value)
         : unit == "ft" ? units::from_feet(value)
                        : units::from_metres(value);
}

double shown_in(double metres, const std::string& unit) {
  return unit == "cm" ? metres * 100 : unit == "ft" ? units::feet({metres}) : metres;
}

std::optional<SpotSpeed> two_runs(units::Length up, units::Length down) {
  std::vector<green::Run> runs(2);
  runs[1].direction = green::Direction::back;
  for (int i = 0; i < 3; ++i) {
    runs[0].rolls.push_back({i + 1, up, {}, {}});
    runs[1].rolls.push_back({i + 1, down, {}, {}});
  }
  return spot_speed(runs);
}

TEST(SlopeFormula, EveryReferenceCase) {
  const auto data = reference::green_speed("slope_correction_cases.json");
  int checked = 0;
  for (const auto& one : data["cases"]) {
    SCOPED_TRACE(one["id"].get<std::string>());
    const std::string unit = one["inputs"]["unit"];
    const auto spot =
        two_runs(length(one["inputs"]["uphill"], unit), length(one["inputs"]["downhill"], unit));
    ASSERT_TRUE(spot);
    const auto& expected = one["expected"];
    const double corrected = shown_in(*spot->slope_corrected_m, unit);
    const double plain = shown_in(spot->plain_mean_m, unit);
    EXPECT_NEAR(corrected, expected["corrected"], 1e-10);
    EXPECT_NEAR(plain, expected["plain_mean"], 1e-10);
    EXPECT_NEAR(plain - corrected, expected["overestimate"], 1e-10);
    EXPECT_NEAR(*spot->ratio, expected["ratio_down_up"], 1e-12);
    ++checked;
  }
  EXPECT_EQ(checked, 6);
}

TEST(SlopeFormula, ThePublishedSteepMeasurement) {
  // SL1: published 10.2 ft corrected, 19.1 ft plain, 8.9 ft apart.
  const auto data = reference::green_speed("slope_correction_cases.json");
  const auto& published = data["cases"][0]["published"];
  const auto spot = two_runs(units::from_centimetres(185), units::from_centimetres(981));
  const double corrected = units::feet({spot->speed_m});
  const double plain = units::feet({spot->plain_mean_m});
  EXPECT_NEAR(corrected, published["corrected_ft"], 0.05);
  EXPECT_NEAR(plain, published["plain_mean_ft"], 0.05);
  EXPECT_NEAR(plain - corrected, published["error_ft"], 0.05);
  EXPECT_EQ(units::show({spot->speed_m}, units::LengthUnit::centimetre), "311 cm");
  EXPECT_EQ(spot->slope_class, SlopeClass::steep);
}

TEST(SlopeFormula, AtEighteenInchesThePlainMeanErrsByLessThanAnInch) {
  // SL2, published statement (common practice).
  const auto spot = two_runs(units::from_feet(8.25), units::from_feet(9.75));
  EXPECT_LT((spot->plain_mean_m - *spot->slope_corrected_m) / units::kMetresPerInch, 1);
  EXPECT_FALSE(spot->directions_apart) << "18 in itself is within";
}

TEST(SlopeClass, AsTheRatingManualDraws) {
  // Course rating manual (read): moderate where downhill is 2 to 3 times uphill,
  // steep above 3.
  const auto class_at = [](double up, double down) {
    return *two_runs(units::from_feet(up), units::from_feet(down))->slope_class;
  };
  EXPECT_EQ(class_at(10, 10), SlopeClass::gentle);
  EXPECT_EQ(class_at(6, 11.9), SlopeClass::gentle);
  EXPECT_EQ(class_at(6, 12), SlopeClass::moderate);
  EXPECT_EQ(class_at(5, 15), SlopeClass::moderate);
  EXPECT_EQ(class_at(5, 15.1), SlopeClass::steep);
  for (int tenths = 30; tenths < 80; ++tenths) {
    EXPECT_EQ(class_at(tenths / 10.0, 3 * tenths / 10.0), SlopeClass::moderate) << tenths;
    EXPECT_EQ(class_at(tenths / 10.0, 2 * tenths / 10.0), SlopeClass::moderate) << tenths;
  }
}

} // namespace
