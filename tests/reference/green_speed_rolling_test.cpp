// A ball that rolls without slipping: Penner AR (2002) Can. J. Phys. 80:83-96
// (model; its figures from memory), values computed from the formulas.
#include "baize/speed/place.h"
#include "baize/units/length.h"
#include "reference/green_speed_data.h"

#include <gtest/gtest.h>

namespace {

using namespace baize::speed;

TEST(Rolling, EveryLineOfTheTable) {
  const auto data = reference::green_speed("rolling_physics.json");
  ASSERT_DOUBLE_EQ(data["constants"]["v0_m_s"], kReleaseSpeed);
  ASSERT_DOUBLE_EQ(data["constants"]["g"], kGravity);
  int checked = 0;
  for (const auto& line : data["table"]) {
    const double metres = line["green_speed_m"];
    SCOPED_TRACE(metres);
    EXPECT_NEAR(baize::units::from_feet(line["green_speed_ft"]).metres, metres, 1e-12);
    const auto a = deceleration(metres);
    ASSERT_TRUE(a);
    EXPECT_NEAR(*a, line["deceleration_m_s2"], 1e-12);
    EXPECT_NEAR(*roll_time(metres), line["mean_roll_time_s"], 1e-12);
    EXPECT_NEAR(rolling_coefficient(*a), line["rolling_coefficient"], 1e-12);
    ++checked;
  }
  EXPECT_EQ(checked, 10);
}

TEST(Rolling, ThePublishedRangeOfTheCoefficient) {
  // Penner (2002), from memory: 0.196 at about 4 ft, 0.065 at about 12 ft.
  const auto data = reference::green_speed("rolling_physics.json");
  const auto& range = data["published"][0]["value"];
  EXPECT_NEAR(rolling_coefficient(*deceleration(4 * 0.3048)), range["about_4_ft"], 5e-4);
  EXPECT_NEAR(rolling_coefficient(*deceleration(12 * 0.3048)), range["about_12_ft"], 5e-4);
}

TEST(Rolling, AMarkAtTheEndLiesAtTheDistance) {
  const auto data = reference::green_speed("rolling_physics.json");
  for (const auto& line : data["table"]) {
    const double metres = line["green_speed_m"];
    const double end = *roll_time(metres);
    EXPECT_NEAR(place_of_mark(end, metres)->metres, metres, 1e-12);
    // Halfway in time three quarters of the way are done: 1 - (1/2)^2.
    EXPECT_NEAR(place_of_mark(end / 2, metres)->metres, 0.75 * metres, 1e-12);
  }
}

TEST(Slope, EveryReferenceCase) {
  const auto data = reference::green_speed("slope_from_two_directions.json");
  int checked = 0;
  for (const auto& one : data["cases"]) {
    SCOPED_TRACE(one["id"].get<std::string>());
    const auto& inputs = one["inputs"];
    const auto& expected = one["expected"];
    const auto found = slope(inputs["uphill_m"], inputs["downhill_m"], inputs["v0"]);
    ASSERT_TRUE(found);
    const double v0 = inputs["v0"];
    EXPECT_NEAR(v0 * v0 / (2 * found->level_deceleration_m_s2), expected["S_m"], 1e-12);
    EXPECT_NEAR(found->level_deceleration_m_s2, expected["level_deceleration"], 1e-12);
    EXPECT_NEAR(found->gravity_component_m_s2, expected["gravity_component_m_s2"], 1e-12);
    EXPECT_NEAR(found->sine, expected["sin_slope_approx"], 1e-12);
    EXPECT_NEAR(found->percent, expected["slope_percent_approx"], 1e-9);
    ++checked;
  }
  EXPECT_EQ(checked, 4);
}

} // namespace
