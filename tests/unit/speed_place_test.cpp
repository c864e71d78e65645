#include "baize/speed/place.h"
#include "unit/special.h"

#include <gtest/gtest.h>

namespace {

using namespace baize::speed;
using special::kNan;

TEST(Place, ByPencil) {
  // Release 2 m/s, 4 m: a = 4 / 8 = 0.5 m/s2, rest after 4 s. At 1 s:
  // x = 2 - 0.25 = 1.75 m, speed 1.5 m/s; 0.1 s of timing is 0.15 m.
  const PlaceOptions options{2.0, 0.5, 0.1};
  const auto place = place_of_mark(1, 4, options);
  ASSERT_TRUE(place);
  EXPECT_DOUBLE_EQ(place->metres, 1.75);
  EXPECT_DOUBLE_EQ(place->standard_error_m, 0.15);
  EXPECT_FALSE(place->own_hop);
}

TEST(Place, TheRampsOwnHopsAreTold) {
  const auto early = place_of_mark(0.2, 3); // 1.8288 * 0.2 and a little less: 0.35 m
  EXPECT_NEAR(early->metres, 0.355, 0.002);
  EXPECT_TRUE(early->own_hop);
  EXPECT_FALSE(place_of_mark(0.35, 3)->own_hop);
}

TEST(Place, AfterRestIsRefusedNotMoved) {
  // 3.048 m at 1.8288 m/s: rest after 3.3333 s.
  EXPECT_TRUE(place_of_mark(3.333, 3.048));
  const auto late = place_of_mark(3.334, 3.048);
  ASSERT_FALSE(late);
  EXPECT_EQ(late.error().code, "mark_after_rest");
  EXPECT_EQ(place_of_mark(-0.1, 3).error().code, "mark_before_release");
  EXPECT_EQ(place_of_mark(kNan, 3).error().code, "mark_before_release");
  EXPECT_EQ(place_of_mark(1, 0).error().code, "distance_out_of_range");
  EXPECT_EQ(place_of_mark(1, kNan).error().code, "distance_out_of_range");
}

TEST(Place, OptionsThatMakeNoSense) {
  EXPECT_TRUE(PlaceOptions{}.valid());
  for (const auto& bad : {PlaceOptions{0, 0.5, 0.1}, PlaceOptions{kNan, 0.5, 0.1},
                          PlaceOptions{1.83, -1, 0.1}, PlaceOptions{1.83, 0.5, kNan}}) {
    EXPECT_FALSE(bad.valid());
    EXPECT_EQ(place_of_mark(1, 3, bad).error().code, "option_out_of_range");
  }
}

TEST(Rolling, Refusals) {
  EXPECT_EQ(deceleration(0).error().code, "distance_out_of_range");
  EXPECT_EQ(deceleration(31).error().code, "distance_out_of_range");
  EXPECT_EQ(deceleration(3, 0).error().code, "release_speed_out_of_range");
  EXPECT_EQ(roll_time(3, kNan).error().code, "release_speed_out_of_range");
  EXPECT_EQ(slope(4, 2).error().code, "uphill_longer");
  EXPECT_EQ(slope(kNan, 2).error().code, "distance_out_of_range");
  EXPECT_EQ(slope(2, 0).error().code, "distance_out_of_range");
  // 1 cm against 30 m: v0^2/4 (1/0.01 - 1/30) = 83.6 m/s2, more than 5/7 g.
  EXPECT_EQ(slope(0.01, 30).error().code, "distance_out_of_range");
}

} // namespace
