// Visits missed because the roll was good: what is usual, and the second reading.
#include "baize/recovery/missed_visits.h"
#include "baize/recovery/work_loss.h"
#include "unit/recovery_records.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace baize::recovery {
namespace {

using namespace baize::testing;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;

TEST(MissedVisits, NineOfTenGapsAreUsual) {
  EXPECT_FALSE(usual_gap({}));
  EXPECT_FALSE(usual_gap({4, 4}));
  EXPECT_EQ(usual_gap({4, 2, 3}), 4); // of three, nine in ten are all
  EXPECT_EQ(usual_gap({30, 4, 4, 3, 4, 2, 4, 4, 3, 4}), 4);
  EXPECT_EQ(usual_gap({30, 4, 4, 3, 4, 2, 4, 4, 3}), 30); // one of nine is more than one in ten
}

TEST(MissedVisits, ASecondReadingOnlyWhereSomeWereMissed) {
  EXPECT_EQ(by_if_good(8, 20, 4), 12);
  EXPECT_FALSE(by_if_good(8, 12, 4));  // on time
  EXPECT_FALSE(by_if_good(8, 11, 4));  // early
  EXPECT_FALSE(by_if_good(0, 20, 4));  // never seen below: nothing to count from
  EXPECT_FALSE(by_if_good(8, 20, {})); // no custom known
}

/// Every 4 days while below 8, then nobody for 12 days, then two good ones.
green::Records long_silence() {
  auto made = records();
  made.works = {work("w1", "coring", "2025-05-01")};
  made.visits = {visit("b1", "2025-04-30", {8, 8, 8}), visit("a1", "2025-05-03", {5, 5, 5}),
                 visit("a2", "2025-05-07", {6, 6, 6}), visit("a3", "2025-05-11", {6, 6, 7}),
                 visit("a4", "2025-05-15", {7, 7, 7}), visit("a5", "2025-05-27", {8, 8, 8}),
                 visit("a6", "2025-05-31", {9, 8, 8})};
  return made;
}

std::vector<WorkLoss> losses_seen(const green::Records& made) {
  return work_losses(made, {}, "7", day("2025-06-30"), {});
}

TEST(MissedVisits, TheLongSilenceIsToldWithItsSecondReading) {
  const auto all = losses_seen(long_silence());
  ASSERT_EQ(all.size(), 1U);
  const RecoveryInterval& back = all[0].under(kHeadline);
  EXPECT_THAT(back.gaps_below, ElementsAre(4, 4, 4));
  EXPECT_EQ(back.after_days, 14);
  EXPECT_EQ(back.by_days, 26); // as recorded, whatever the second reading
  EXPECT_EQ(back.by_days_if_good, 18);
  EXPECT_THAT(all[0].notes,
              Contains("No scored visit between 2025-05-15 and 2025-05-27, though while it was "
                       "below they were seldom more than 4 days apart. If they were missed because "
                       "the ball rolled well again, it was back by 2025-05-19."));
}

TEST(MissedVisits, AVisitInTheSilenceEndsIt) {
  auto made = long_silence();
  made.visits.push_back(visit("a7", "2025-05-19", {8, 8, 8}));
  const auto all = losses_seen(made);
  EXPECT_EQ(all[0].under(Definition::at_standard).by_days, 18);
  EXPECT_FALSE(all[0].under(Definition::at_standard).by_days_if_good);
  EXPECT_THAT(all[0].notes, Not(Contains(HasSubstr("No scored visit between"))));
}

TEST(MissedVisits, WorksOfOneDayTellTheirGapsOnce) {
  auto made = long_silence();
  made.visits.erase(made.visits.begin() + 2); // gaps of 8 and 4: two are no custom
  made.works.push_back(work("w2", "scarifying", "2025-05-01"));
  for (const WorkLoss& loss : losses_seen(made)) {
    EXPECT_FALSE(loss.under(kHeadline).by_days_if_good) << loss.work;
  }
}

} // namespace
} // namespace baize::recovery
