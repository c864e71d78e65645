#include "baize/recovery/series.h"
#include "unit/recovery_records.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace baize::recovery {
namespace {

using namespace baize::testing;
using ::testing::ElementsAre;

TEST(VisitScores, RollsCountOnceAndTotalsTogether) {
  auto records = testing::records();
  green::Visit seen = visit("v1", "2025-05-01", {6, 9});
  green::Run total;
  total.spot = "main";
  total.direction = green::Direction::back;
  total.total = 25;
  total.total_of = 3;
  seen.runs.push_back(total);
  records.visits.push_back(seen);
  const auto scores = visit_scores(records, "7");
  ASSERT_EQ(scores.size(), 1U);
  EXPECT_EQ(scores[0].rolls, 5);
  EXPECT_EQ(scores[0].total, 40);
  EXPECT_EQ(scores[0].score, 8);
  EXPECT_EQ(scores[0].lowest, 6);
  EXPECT_EQ(scores[0].highest, 9);
}

TEST(VisitScores, TotalAloneGivesItsMeanTwice) {
  auto records = testing::records();
  green::Visit seen = visit("v1", "2025-05-01", {});
  seen.runs[0].total = 22;
  seen.runs[0].total_of = 3;
  records.visits.push_back(seen);
  const auto scores = visit_scores(records, "7");
  ASSERT_EQ(scores.size(), 1U);
  EXPECT_EQ(scores[0].lowest, 22.0 / 3);
  EXPECT_EQ(scores[0].highest, 22.0 / 3);
}

TEST(VisitScores, NotScoredIsLeftOutNotZero) {
  auto records = testing::records();
  green::Visit measured = visit("v1", "2025-05-01", {});
  green::Roll roll;
  roll.distance = units::from_metres(3);
  measured.runs[0].rolls.push_back(roll);
  records.visits = {measured, visit("v2", "2025-05-02", {8})};
  records.visits[1].runs[0].rolls.push_back(roll);
  const auto scores = visit_scores(records, "7");
  ASSERT_EQ(scores.size(), 1U);
  EXPECT_EQ(scores[0].visit, "v2");
  EXPECT_EQ(scores[0].rolls, 1);
  EXPECT_EQ(scores[0].score, 8);
}

TEST(VisitScores, OrderIsDayTimeId) {
  auto records = testing::records();
  records.visits = {visit("d", "2025-05-02", {8}), visit("c", "2025-05-01", {8}),
                    visit("b", "2025-05-01", {8}), visit("a", "2025-05-01", {8}),
                    visit("z", "2025-05-01", {8})};
  records.visits[1].from = minute("07:00");
  records.visits[2].from = minute("07:00");
  records.visits[3].to = minute("09:00"); // only its end was written down
  std::vector<std::string> ids;
  for (const VisitScore& score : visit_scores(records, "7")) {
    ids.push_back(score.visit);
  }
  EXPECT_THAT(ids, ElementsAre("z", "b", "c", "a", "d"));
}

TEST(VisitScores, HalfTakesItsSpotsAndItsVisits) {
  auto records = testing::records();
  green::Visit whole = visit("v1", "2025-05-01", {1}); // "main" lies in no half
  whole.runs.push_back(run("n1", {8, 8}));
  whole.runs.push_back(run("s1", {4, 4}));
  green::Visit north = visit("v2", "2025-05-02", {7}); // "main" during a visit of the north half
  north.half = "north";
  north.runs.push_back(run("s1", {2})); // yet this spot lies south
  green::Visit south = visit("v3", "2025-05-03", {9});
  south.half = "south";
  records.visits = {whole, north, south};
  const auto scores = visit_scores(records, "7", "north");
  ASSERT_EQ(scores.size(), 2U);
  EXPECT_EQ(scores[0].score, 8);
  EXPECT_EQ(scores[0].rolls, 2);
  EXPECT_EQ(scores[1].visit, "v2");
  EXPECT_EQ(scores[1].score, 7);
  EXPECT_EQ(visit_scores(records, "7").size(), 3U);
  EXPECT_EQ(visit_scores(records, "7")[0].rolls, 5);
  EXPECT_TRUE(visit_scores(records, "8").empty());
}

TEST(DayScores, PutsADayTogetherInAnyOrder) {
  auto records = testing::records();
  records.visits = {visit("v1", "2025-05-01", {8, 8, 8}), visit("v2", "2025-05-01", {5}),
                    visit("v3", "2025-05-03", {9})};
  auto visits = visit_scores(records, "7");
  std::swap(visits[0], visits[2]);
  const auto days = day_scores(visits);
  ASSERT_EQ(days.size(), 2U);
  EXPECT_EQ(days[0].score, 29.0 / 4); // each roll once, not each visit
  EXPECT_EQ(days[0].total, 29);
  EXPECT_EQ(days[0].rolls, 4);
  EXPECT_THAT(days[0].visits, ElementsAre("v1", "v2"));
  EXPECT_EQ(days[1].day, day("2025-05-03"));
  EXPECT_TRUE(day_scores({}).empty());
}

// By pencil: balls 1 to 3 scored 8 8 8 by one and 7 7 8 by the other are three
// balls of (24 + 22)/2 = 23; with a visit of one ball scored 5: 28 in 4.
TEST(DayScores, CountsSharedBallsOnce) {
  auto records = testing::records();
  records.visits = {visit("v1", "2025-05-01", {8, 8, 8}), visit("v2", "2025-05-01", {7, 7, 8}),
                    visit("v3", "2025-05-01", {5})};
  records.visits[1].observer = "bea";
  records.visits[0].shared_rolls = records.visits[1].shared_rolls = "s";
  auto visits = visit_scores(records, "7");
  auto days = day_scores(visits);
  ASSERT_EQ(days.size(), 1U);
  EXPECT_EQ(days[0].total, 28);
  EXPECT_EQ(days[0].rolls, 4);
  EXPECT_EQ(days[0].score, 7);
  EXPECT_THAT(days[0].visits, ElementsAre("v1", "v2", "v3"));
  std::reverse(visits.begin(), visits.end());
  EXPECT_EQ(day_scores(visits)[0].score, 7);
  records.visits[1].runs[0].rolls[2].score.reset(); // he missed one: 7 7 is a mean of 7
  days = day_scores(visit_scores(records, "7"));
  EXPECT_EQ(days[0].rolls, 4);
  EXPECT_EQ(days[0].total, (24 + 21) / 2.0 + 5);
}

TEST(Reaches, ForgivesTheLastDigitOnly) {
  EXPECT_TRUE(reaches(8, 8));
  EXPECT_TRUE(reaches(6.3, 6.4 - 0.1)); // in binary just above 6.3
  EXPECT_TRUE(reaches(77.0 / 10, 7.7));
  EXPECT_FALSE(reaches(7999.0 / 1000, 8));
}

} // namespace
} // namespace baize::recovery
