// Which balls several observers scored.
#include "baize/observers/shared_table.h"
#include "unit/observers_samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace observers_test;
using observers::shared_table;
using testing::ElementsAre;

TEST(SharedTable, MatchesBallsBySpotDirectionAndOrder) {
  auto records = club({visit("ann", day("2025-04-01"), "s1", {8, 6}, {9, 7}),
                       visit("bob", day("2025-04-01"), "s1", {7, 0}, {9, 8})});
  std::swap(records.visits[1].runs[0], records.visits[1].runs[1]); // order of runs says nothing
  const auto table = shared_table(records, kToday);
  EXPECT_THAT(table.observers, ElementsAre("bob", "ann")); // the club's order
  ASSERT_EQ(table.sessions.size(), 1U);
  EXPECT_THAT(table.sessions[0].visits, ElementsAre("2025-04-01/bob/s1", "2025-04-01/ann/s1"));
  ASSERT_EQ(table.rolls.size(), 3U) << "the ball that Bob missed is no pair";
  ASSERT_EQ(table.runs.size(), 1U) << "nor is the run, of whose balls one is missing";
  double ann = 0;
  for (const auto& ball : table.rolls) {
    ann += *ball.scores[1];
  }
  EXPECT_EQ(ann, 8 + 9 + 7);
  EXPECT_EQ(*table.runs[0].scores[0], 8.5);
  EXPECT_EQ(table.runs[0].direction, green::Direction::back);
}

TEST(SharedTable, ATotalGivesTheRunAndNoBalls) {
  auto records = club(
      {visit("ann", day("2025-04-01"), "s1", {8, 6, 7}), visit("cy", day("2025-04-01"), "s1", {})});
  records.visits[1].runs = {total(green::Direction::out, 24, 3)};
  const auto table = shared_table(records, kToday);
  EXPECT_TRUE(table.rolls.empty());
  ASSERT_EQ(table.runs.size(), 1U);
  EXPECT_EQ(table.runs[0].balls, 3);
  EXPECT_EQ(*table.runs[0].scores[0], 7);
  EXPECT_EQ(*table.runs[0].scores[1], 8);
}

TEST(SharedTable, CountsVisitsThatWait) {
  const auto table = shared_table(
      club({visit("ann", day("2025-04-01"), "s1", {8}), visit("bob", day("2025-04-02"), "s1", {8}),
            visit("bob", day("2026-04-02"), "s9", {8})}),
      kToday);
  EXPECT_TRUE(table.sessions.empty()) << "two days are not the same balls";
  EXPECT_EQ(table.waiting, 2) << "and what lies after today is not there yet";
}

TEST(SharedTable, OneObserverTwiceIsNoPair) {
  auto records = club(
      {visit("ann", day("2025-04-01"), "s1", {8}), visit("ann", day("2025-04-01"), "s1", {7})});
  EXPECT_TRUE(shared_table(records, kToday).sessions.empty());
  EXPECT_TRUE(shared_table(club({}), kToday).observers.empty());
}

} // namespace
