#include "baize/recovery/ledger.h"
#include "unit/recovery_records.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace baize::recovery {
namespace {

using namespace baize::testing;
using ::testing::ElementsAre;
using enum DayKind;

Ledger may(const green::Records& records, int first, int last,
           const std::string& end = "2025-06-30") {
  const units::Day start = day("2025-05-01");
  return true_days(records, "7", {start + (first - 1), start + (last - 1)}, day(end));
}

green::Records two_visits() {
  auto records = testing::records();
  records.visits = {visit("v1", "2025-05-02", {8}), visit("v2", "2025-05-05", {8})};
  return records;
}

TEST(TrueDays, EveryKindInItsPlace) {
  auto records = two_visits();
  records.visits.push_back(visit("v3", "2025-05-07", {7}));
  records.works.push_back(work("c1", "closed", "2025-05-08"));
  EXPECT_THAT(may(records, 1, 8).days,
              ElementsAre(unmeasured, measured_true, between_true, between_true, measured_true,
                          unmeasured, measured_not, closed));
}

TEST(TrueDays, NeighboursMayLieOutside) {
  const Ledger ledger = may(two_visits(), 3, 4);
  EXPECT_THAT(ledger.days, ElementsAre(between_true, between_true));
  EXPECT_EQ(ledger.fewest_true(), 0);
  EXPECT_EQ(ledger.most_true(), 2);
}

TEST(TrueDays, TwoWeeksMayBeBridgedAndNotADayMore) {
  auto records = two_visits();
  records.visits[1].day = day("2025-05-16"); // 14 days after the first
  EXPECT_EQ(may(records, 3, 15).between_true, 13);
  records.visits[1].day = day("2025-05-17");
  EXPECT_EQ(may(records, 3, 16).between_true, 0);
  EXPECT_EQ(may(records, 3, 16).unmeasured, 14);
}

TEST(TrueDays, AWorkBetweenTakesTheTrustAway) {
  auto records = two_visits();
  records.works.push_back(work("w1", "coring", "2025-05-04"));
  EXPECT_THAT(may(records, 3, 4).days, ElementsAre(unmeasured, unmeasured));
  records.works[0].half = "south";
  EXPECT_THAT(may(records, 3, 4).days, ElementsAre(unmeasured, unmeasured));
  records.works[0].day = day("2025-05-02"); // perhaps after that day's visit
  EXPECT_THAT(may(records, 3, 4).days, ElementsAre(unmeasured, unmeasured));
  records.works[0].day = day("2025-05-05"); // that day's visit saw it, or came before it
  EXPECT_THAT(may(records, 3, 4).days, ElementsAre(between_true, between_true));
  records.works[0].day = day("2025-04-20");
  records.works[0].until = day("2025-05-01");
  EXPECT_THAT(may(records, 3, 4).days, ElementsAre(between_true, between_true));
  records.works[0].until = day("2025-05-02");
  EXPECT_THAT(may(records, 3, 4).days, ElementsAre(unmeasured, unmeasured));
  records.works[0] = work("w1", "rolling", "2025-05-03");
  EXPECT_THAT(may(records, 3, 4).days, ElementsAre(between_true, between_true));
}

TEST(TrueDays, DaysToComeAreNotInIt) {
  const Ledger ledger = may(two_visits(), 1, 31, "2025-05-04");
  EXPECT_EQ(ledger.period.last, day("2025-05-04"));
  // the visit of the 5th is not known on the 4th
  EXPECT_THAT(ledger.days, ElementsAre(unmeasured, measured_true, unmeasured, unmeasured));
  const Ledger none = may(two_visits(), 10, 20, "2025-05-04");
  EXPECT_TRUE(none.days.empty());
  EXPECT_EQ(none.period.days(), 0);
  EXPECT_EQ(none.open(), 0);
}

TEST(TrueDays, AGreenIsClosedWhenAllOfItIs) {
  auto records = testing::records();
  records.works = {work("c1", "closed", "2025-05-01"), work("c2", "closed", "2025-05-02")};
  records.works[0].half = "north";
  records.works[0].until = day("2025-05-03");
  records.works[1].half = "south";
  records.works[1].until = day("2025-05-04");
  EXPECT_THAT(may(records, 1, 4).days, ElementsAre(unmeasured, closed, closed, unmeasured));
  records.works[0].greens = {"8"};
  EXPECT_EQ(may(records, 1, 4).closed, 0);
}

TEST(TrueDays, AllVisitsOfADayMakeItsScore) {
  auto records = testing::records();
  records.visits = {visit("v1", "2025-05-01", {8, 8, 8}), visit("v2", "2025-05-01", {7})};
  EXPECT_EQ(may(records, 1, 1).measured_not, 1);
  records.standards.push_back({});
  records.standards[0].score = 7.75; // 31/4
  EXPECT_EQ(may(records, 1, 1).measured_true, 1);
}

} // namespace
} // namespace baize::recovery
