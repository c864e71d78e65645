// The reader of the tables is tested too: a slip in a table must be refused, not passed over.
#include "scenarios/scenario.h"

#include <gtest/gtest.h>

namespace baize::scenarios {
namespace {

const std::string kClub = "[club]\nid record_end\noak 2025-12-31\n";
const std::string kExpect = "[expect losses]\nwork green depth\nw1 7 2\n";

std::string refusal(const std::string& text) {
  const auto scenario = parse_scenario(text, "t");
  return scenario ? "" : units::sentence(scenario.error());
}

TEST(ScenarioReader, MakesRecords) {
  const auto scenario = parse_scenario(
      kClub + kExpect +
          "[greens]\ngreen grass halves spots\n7 warm front,back f1@front\n"
          "[visits]\nday time green observer scores\n2025-05-01 07:30 7 bea f1:8,9,10/25of3\n"
          "[works]\nid kind day greens disruptive # a comment\nw1 coring 2025-05-02 7,8 -\n"
          "[weather]\nfrom to tmin tmax\n2025-05-01 2025-05-03 10 20\n",
      "t");
  ASSERT_TRUE(scenario) << units::sentence(scenario.error());
  const green::Records& records = scenario->records;
  ASSERT_EQ(records.visits.size(), 1U);
  const green::Visit& visit = records.visits.front();
  EXPECT_EQ(visit.from->of_day, 450);
  ASSERT_EQ(visit.runs.size(), 2U);
  EXPECT_EQ(visit.runs[0].rolls.size(), 3U);
  EXPECT_EQ(visit.runs[0].rolls[2].score, 10);
  EXPECT_EQ(visit.runs[1].direction, green::Direction::back);
  EXPECT_EQ(visit.runs[1].spot, "f1");
  EXPECT_EQ(visit.runs[1].total, 25);
  EXPECT_EQ(records.greens.front().spots.front().half, "front");
  EXPECT_EQ(records.observers.front().id, "bea");
  EXPECT_EQ(records.works.front().greens, (std::vector<std::string>{"7", "8"}));
  EXPECT_FALSE(records.works.front().disruptive);
  EXPECT_EQ(scenario->weather.size(), 3U);
  EXPECT_EQ(growth_of(*scenario, "7"), climate::kWarmSeason);
}

TEST(ScenarioReader, RefusesSlips) {
  EXPECT_NE(refusal(kClub + "[vists]\nday\n" + kExpect), "");
  EXPECT_NE(refusal(kClub + "[visits]\ndya green scores\n" + kExpect), "");
  EXPECT_NE(refusal(kClub + "[visits]\nday green scores\n2025-02-30 7 8\n" + kExpect), "");
  EXPECT_NE(refusal(kClub + "[visits]\nday green scores\n2025-02-20 7 8,x\n" + kExpect), "");
  EXPECT_NE(refusal(kClub + "[visits]\nday green scores\n2025-02-20 7 8/8/8\n" + kExpect), "");
  EXPECT_NE(refusal(kClub + "[visits]\nday green scores\n2025-02-20 7\n" + kExpect), "");
  EXPECT_NE(refusal(kClub + "[expect losses]\nwork green depth\nw1 7 2..5\n"), "");
  EXPECT_NE(refusal(kClub), "");
  EXPECT_NE(refusal(kExpect), "");
  EXPECT_EQ(refusal(kClub + kExpect), "");
}

TEST(ScenarioReader, ComparesCells) {
  const Row row{1, {{"before", "46/6"}, {"area", "-"}, {"day", "2025-01-01"}}};
  EXPECT_TRUE(agrees(row, "before", std::optional(46.0 / 6)));
  EXPECT_FALSE(agrees(row, "before", std::optional(7.667)));
  EXPECT_FALSE(agrees(row, "before", std::optional<double>()));
  EXPECT_TRUE(agrees(row, "area", std::optional<double>()));
  EXPECT_FALSE(agrees(row, "area", std::optional(0.0)));
  EXPECT_TRUE(agrees(row, "not a column", std::optional(1.0)));
  EXPECT_TRUE(agrees(row, "day", std::optional<std::string>("2025-01-01")));
  EXPECT_FALSE(agrees(row, "day", std::optional<std::string>()));
}

} // namespace
} // namespace baize::scenarios
