// What the documented files become. The awkward club tests/clubs/larch_hollow
// is invented and written by hand; its lengths are worked by pencil here.
#include "baize/green/roll_score.h"
#include "unit/sheets_files.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace {

using namespace baize;
using namespace sheets_test;
using testing::ElementsAre;
using testing::HasSubstr;

const green::Visit& visit(const services::SheetsReading& reading, const std::string& id) {
  const auto& all = reading.records.visits;
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const auto& v) { return v.id == id; });
  EXPECT_NE(found, all.end()) << id;
  return *found;
}

class LarchHollow : public testing::Test {
 protected:
  services::SheetsReading reading = read(club("larch_hollow"));
};

TEST_F(LarchHollow, ComesInWithoutAProblem) {
  EXPECT_THAT(sentences(reading.problems), ElementsAre());
  EXPECT_EQ(reading.records.club.name, "Larch Hollow \"am Weiher\"");
  EXPECT_EQ(reading.records.club.latitude_deg, 51.25);
  EXPECT_EQ(reading.records.visits.size(), 7U);
  EXPECT_EQ(reading.records.readings.size(), 5U);
  EXPECT_EQ(reading.records.works.size(), 5U);
  EXPECT_EQ(reading.files.size(), 9U);
}

TEST_F(LarchHollow, Greens) {
  ASSERT_EQ(reading.records.greens.size(), 2U);
  const green::Green& first = reading.records.greens[0];
  EXPECT_EQ(first.name, "1. Grün (Mühle)");
  EXPECT_EQ(first.area_m2, 412.5);
  EXPECT_EQ(first.spots, (std::vector<green::Spot>{{"A", 35, ""}, {"B", std::nullopt, ""}}));
  const green::Green& second = reading.records.greens[1];
  EXPECT_EQ(second.name, "2. \"Große Wiese\"");
  EXPECT_THAT(second.halves, ElementsAre("west", "east"));
  EXPECT_EQ(second.spots[1], (green::Spot{"E", 300.5, "east"}));
}

TEST_F(LarchHollow, IdsCanBeRead) {
  std::vector<std::string> ids;
  for (const green::Visit& one : reading.records.visits) {
    ids.push_back(one.id);
  }
  EXPECT_THAT(ids, ElementsAre("2025-04-03T0810/ab/1", "2025-04-10T0730/ab/1", "2025-04-12/km/1",
                               "2025-04-22T0705/km/2/west", "2025-04-22T1740/km/2/west",
                               "2025-04-22T1800/km/2/east", "2025-05-06T0800/ab/2"));
  EXPECT_EQ(reading.records.readings[1].id, "2025-04-03T0830/ab/1/A/soil_moisture#2");
  EXPECT_EQ(reading.records.works[0].id, "2025-04-22T0900/coring/2/west");
  EXPECT_EQ(reading.records.works[3].id, "2026-01-12/closed/all");
  EXPECT_EQ(reading.records.fixtures[0].id, "2025-06-14/Sommerpokal");
}

TEST_F(LarchHollow, FeetAndInchesWithADecimalComma) {
  const green::Visit& full = visit(reading, "2025-04-03T0810/ab/1");
  ASSERT_EQ(full.runs.size(), 2U);
  // 9'6" = 114 in, 9'6.5" = 114.5 in, 9-7 = 115 in; an inch is 0.0254 m by definition.
  EXPECT_NEAR(full.runs[0].rolls[0].distance->metres, 2.8956, 1e-12);
  EXPECT_NEAR(full.runs[0].rolls[1].distance->metres, 2.9083, 1e-12);
  EXPECT_NEAR(full.runs[0].rolls[2].distance->metres, 2.921, 1e-12);
  EXPECT_NEAR(full.runs[1].rolls[2].distance->metres, 2.7432, 1e-12); // 9'
  EXPECT_EQ(full.to, units::Minute{8 * 60 + 25});
}

TEST_F(LarchHollow, MarksWithAndWithoutTimes) {
  const green::Visit& full = visit(reading, "2025-04-03T0810/ab/1");
  using green::Mark;
  using green::MarkKind;
  EXPECT_EQ(full.runs[0].rolls[0].marks, std::vector<Mark>{});
  EXPECT_EQ(full.runs[0].rolls[2].marks, (std::vector<Mark>{{MarkKind::snake, 2.4}}));
  EXPECT_EQ(full.runs[1].rolls[1].marks,
            (std::vector<Mark>{{MarkKind::bobble, 1.2}, {MarkKind::bobble, 2.05}}));
}

TEST_F(LarchHollow, NotMeasuredIsNotZero) {
  const green::Visit& speed = visit(reading, "2025-04-10T0730/ab/1");
  EXPECT_FALSE(speed.runs[0].rolls[0].marks);
  EXPECT_FALSE(speed.runs[0].rolls[0].score);
  const green::Visit& scores = visit(reading, "2025-04-12/km/1");
  EXPECT_FALSE(scores.from);
  EXPECT_FALSE(scores.runs[0].rolls[0].distance);
  EXPECT_EQ(green::score_sum(scores.runs)->total, 50);
}

TEST_F(LarchHollow, TotalsAloneAndBesideDistances) {
  const green::Visit& totals = visit(reading, "2025-04-22T0705/km/2/west");
  EXPECT_EQ(totals.half, "west");
  EXPECT_TRUE(totals.runs[0].rolls.empty());
  EXPECT_EQ(totals.runs[0].total, 25);
  EXPECT_EQ(totals.runs[0].total_of, 3);
  const green::Visit& both = visit(reading, "2025-05-06T0800/ab/2");
  EXPECT_EQ(both.runs[1].rolls.size(), 3U);
  EXPECT_EQ(both.runs[1].total, 23);
}

TEST_F(LarchHollow, ConditionsJoinTheirVisit) {
  const green::Visit& full = visit(reading, "2025-04-03T0810/ab/1");
  EXPECT_EQ(full.conditions.hours_since_mowing, 1.5);
  EXPECT_EQ(full.conditions.dew, "light");
  EXPECT_EQ(full.note, "Nebel, dann Sonne;\r\n\"wie Samt\" laut Platzwart");
  EXPECT_EQ(visit(reading, "2025-04-12/km/1").note, "nach dem Regen");
}

TEST_F(LarchHollow, Works) {
  const green::Work& coring = reading.records.works[0];
  EXPECT_THAT(coring.greens, ElementsAre("2"));
  ASSERT_EQ(coring.parameters.size(), 6U);
  EXPECT_EQ(coring.parameters[0], (green::Parameter{"tine_diameter", 13, ""}));
  EXPECT_EQ(coring.parameters[1], (green::Parameter{"diameter_measured", std::nullopt, "outside"}));
  EXPECT_EQ(coring.parameters[5], (green::Parameter{"sand", 3.5, ""}));
  EXPECT_THAT(reading.records.works[2].greens, ElementsAre("1", "2"));
  EXPECT_EQ(reading.records.works[2].disruptive, false);
  EXPECT_TRUE(reading.records.works[3].greens.empty());
}

TEST_F(LarchHollow, FixturesAndStandards) {
  const green::Fixture& cup = reading.records.fixtures[0];
  EXPECT_EQ(cup.days.days(), 2);
  EXPECT_NEAR(cup.speed_wanted->metres, 3.1, 1e-12);
  EXPECT_EQ(reading.records.fixtures[1].importance, 1);
  EXPECT_EQ(green::standard_on(reading.records.standards, "2", *units::make_day(2025, 12, 24)), 7);
}

TEST_F(LarchHollow, ContradictionIsKeptAndPointedOut) {
  EXPECT_EQ(visit(reading, "2025-05-06T0800/ab/2").runs[0].rolls[0].score, 9);
  ASSERT_EQ(reading.remarks.size(), 3U);
  EXPECT_EQ(
      units::sentence(reading.remarks[0]).find("rolls.csv line 26 column score: score is '9'"), 0U)
      << units::sentence(reading.remarks[0]);
}

TEST_F(LarchHollow, RecordsSayWhereTheyStand) {
  EXPECT_EQ(visit(reading, "2025-04-10T0730/ab/1").source, (green::Source{"rolls.csv", 8}));
  EXPECT_EQ(reading.records.works[1].source, (green::Source{"works.csv", 3}));
}

TEST_F(LarchHollow, TwiceTheSameFilesTwiceTheSameRecords) {
  Files files = club("larch_hollow");
  std::reverse(files.begin(), files.end());
  EXPECT_EQ(read(files).records, reading.records);
}

TEST(SheetsRead, ColumnsInAnyOrderAndUnit) {
  const auto metres = read(small_club());
  const auto feet =
      read(small_club_with("rolls.csv", "score\tdistance_cm\troll\tdirection\tspot\tgreen\t"
                                        "observer\tfrom\tday_dmy\n"
                                        "8\t310\t1\tout\tA\t1\tab\t08:10\t03-04-2025\n"));
  EXPECT_THAT(sentences(feet.problems), ElementsAre());
  EXPECT_EQ(feet.records, metres.records);
}

TEST(SheetsRead, ObserversMayBeImplied) {
  Files files = small_club();
  files.erase(files.begin() + 2);
  const auto reading = read(files);
  EXPECT_TRUE(reading.good());
  EXPECT_EQ(reading.records.observers.front().name, "ab");
  EXPECT_THAT(sentences(reading.remarks),
              ElementsAre("observers.csv: list of observers is missing, but must be given for "
                          "observers to have names; taken as found: ab."));
}

TEST(SheetsRead, AnIdOfItsOwnWins) {
  const auto reading = read(
      small_club_with("rolls.csv", "visit,day,observer,green,spot,direction,roll,score\n"
                                   "V1,2025-04-03,ab,1,A,out,1,8\nV2,2025-04-03,ab,1,A,out,1,7\n"));
  EXPECT_THAT(sentences(reading.problems), ElementsAre());
  ASSERT_EQ(reading.records.visits.size(), 2U);
  EXPECT_EQ(reading.records.visits[1].id, "V2");
}

TEST(SheetsRead, VisitsJoinByIdOrByKey) {
  Files files = small_club_with("visits.csv", "day,from,observer,green,dew\n"
                                              "2025-04-03,08:10,ab,1,heavy\n");
  EXPECT_EQ(read(files).records.visits[0].conditions.dew, "heavy");
  files.back().content = "visit,day,from,observer,green,dew\nV9,2025-04-03,08:10,ab,1,heavy\n";
  const auto named = read(files);
  ASSERT_EQ(named.records.visits.size(), 1U);
  EXPECT_EQ(named.records.visits[0].id, "V9");
}

TEST(SheetsRead, SortedSheetMakesTheSameVisit) {
  const auto in_order = read(small_club_with_rolls("2025-04-03,,,ab,1,A,out,1,3.1,,,,\n"
                                                   "2025-04-03,,,ab,1,A,out,2,3.2,,,,\n"));
  const auto sorted = read(small_club_with_rolls("2025-04-03,,,ab,1,A,out,2,3.2,,,,\n"
                                                 "2025-04-03,,,ab,1,A,out,1,3.1,,,,\n"));
  EXPECT_EQ(in_order.records, sorted.records);
}

TEST(SheetsRead, ReportCountsRowsAndRecords) {
  const auto reading = read(club("larch_hollow"));
  for (const auto& file : reading.files) {
    if (file.name == "rolls.csv") {
      EXPECT_EQ(file.rows, 31);
      EXPECT_EQ(file.records, 7);
      EXPECT_EQ(file.problems, 0);
    }
  }
}

} // namespace
