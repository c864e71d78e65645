// The release ramp's protocol. Status of each figure stands in the data file:
// release speed and spread of three balls from memory of the instruction
// booklet; the gap between directions is common practice, no source.
#include "baize/speed/green_speed.h"
#include "baize/speed/rolling.h"
#include "baize/units/number.h"
#include "reference/green_speed_data.h"

#include <gtest/gtest.h>

#include <map>
#include <sstream>

namespace {

using namespace baize;

double fact(const std::string& id, const char* column) {
  const auto data = reference::green_speed("protocol_facts.json");
  for (const auto& one : data["facts"]) {
    if (one["id"] == id) {
      return one[column];
    }
  }
  ADD_FAILURE() << id << " is not in the data";
  return 0;
}

TEST(Protocol, TheDefaultsAreItsFigures) {
  const speed::Options options;
  EXPECT_DOUBLE_EQ(options.run_spread_m, fact("max_spread_three_balls", "si"));
  EXPECT_DOUBLE_EQ(options.direction_gap_m, fact("max_difference_two_directions", "si"));
  EXPECT_DOUBLE_EQ(speed::kReleaseSpeed, fact("release_speed_at_foot", "si"));
}

TEST(Protocol, InchesAndFeetAreTheirMetres) {
  for (const char* id :
       {"max_spread_three_balls", "max_difference_two_directions", "ramp_length",
        "notch_from_lower_end", "golfers_do_not_notice_below", "groove_support_points_apart"}) {
    EXPECT_NEAR(units::from_inches(fact(id, "value")).metres, fact(id, "si"), 1e-12) << id;
  }
}

TEST(Protocol, TheReadingIsTheMeanOfTheDirectionsMeans) {
  // Common practice. Three balls one way and one the other: (3 + 3.3) / 2, not
  // the mean of the four.
  std::vector<green::Run> runs(2);
  runs[1].direction = green::Direction::back;
  for (int i = 1; i <= 3; ++i) {
    runs[0].rolls.push_back({i, units::from_metres(3), {}, {}});
  }
  runs[1].rolls.push_back({1, units::from_metres(3.3), {}, {}});
  EXPECT_DOUBLE_EQ(speed::spot_speed(runs)->speed_m, 3.15);
}

TEST(SpeedClasses, FeetAndMetresAgreeAndReadBack) {
  // Ten class figures of the survey of 1976-77 (memory, two secondary pages).
  std::ifstream in(BAIZE_SOURCE_DIR "/tests/reference/data/green_speed/speed_classes.csv");
  std::string line;
  std::getline(in, line);
  int checked = 0;
  while (std::getline(in, line)) {
    std::istringstream cells(line);
    std::string play, name, feet, metres;
    std::getline(cells, play, ',');
    std::getline(cells, name, ',');
    std::getline(cells, feet, ',');
    std::getline(cells, metres, ',');
    const auto by_feet = units::parse_length(feet, units::LengthUnit::foot);
    const auto by_metres = units::parse_length(metres, units::LengthUnit::metre);
    ASSERT_TRUE(by_feet && by_metres) << line;
    EXPECT_NEAR(by_feet->metres, by_metres->metres, 1e-12) << line;
    EXPECT_EQ(units::show(*by_metres, units::LengthUnit::foot), feet + " ft");
    ++checked;
  }
  EXPECT_EQ(checked, 10);
}

} // namespace
