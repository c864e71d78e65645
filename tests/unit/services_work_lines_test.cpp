// Expected values worked out by hand from the small clubs written here.
#include "baize/services/work_review.h"
#include "unit/services_club.h"

#include <gtest/gtest.h>

namespace baize::testing {
namespace {

const units::Day kWorkDay = day(2025, 5, 20);

TEST(WorkLines, NewestFirstAndRoutineWithoutFigures) {
  auto records = club_of(2);
  add_work(records, "coring", kWorkDay);
  add_work(records, "rolling", kWorkDay + 20, {"1"});
  const auto lines = services::work_lines(records, {}, day(2025, 7, 1));
  ASSERT_EQ(lines.size(), 2U);
  EXPECT_EQ(lines[0].work.kind, "rolling");
  EXPECT_EQ(lines[0].greens, 1);
  EXPECT_EQ(lines[0].censored, 0);
  EXPECT_FALSE(lines[0].mean_depth);
  EXPECT_EQ(lines[1].greens, 2);
  EXPECT_EQ(lines[1].censored, 2) << "nobody visited, so no right end is known";
  EXPECT_FALSE(lines[1].mean_depth);
  EXPECT_FALSE(lines[1].back_by_days);
}

TEST(WorkLines, SpansTheGreens) {
  auto records = club_of(2);
  add_work(records, "coring", kWorkDay);
  add_visit(records, "1", kWorkDay - 2, 90);
  add_visit(records, "1", kWorkDay + 2, 70);
  add_visit(records, "1", kWorkDay + 10, 90);
  add_visit(records, "1", kWorkDay + 12, 90);
  add_visit(records, "2", kWorkDay - 2, 85);
  add_visit(records, "2", kWorkDay + 4, 75);
  add_visit(records, "2", kWorkDay + 20, 85);
  add_visit(records, "2", kWorkDay + 22, 85);
  const auto lines = services::work_lines(records, {}, day(2025, 7, 1));
  ASSERT_EQ(lines.size(), 1U);
  EXPECT_DOUBLE_EQ(*lines[0].mean_depth, 1.5); // 2 and 1
  EXPECT_EQ(lines[0].back_after_days, 2);
  EXPECT_EQ(lines[0].back_by_days, 20);
  // Green 1: 2 x 2 + 8 x 1 = 12; green 2: 4 x 1 + 16 x 0.5 = 12.
  EXPECT_DOUBLE_EQ(*lines[0].mean_score_days, 12);
  EXPECT_EQ(lines[0].losses_open, 0);
  records.visits.back().runs = records.visits[5].runs; // 75 again, so not two running
  const auto fallen = services::work_lines(records, {}, day(2025, 7, 1))[0];
  EXPECT_EQ(fallen.back_by_days, 10) << "of the green that is back";
  EXPECT_EQ(fallen.back, 1);
  EXPECT_EQ(fallen.censored, 1);
}

// Green 1 never came back: its 10 x 2 points count, and the mean says it is a least.
TEST(WorkLines, SaysThatALossHasNotEnded) {
  auto records = club_of(2);
  add_work(records, "coring", kWorkDay);
  add_visit(records, "1", kWorkDay - 2, 90);
  add_visit(records, "1", kWorkDay + 10, 70);
  add_visit(records, "2", kWorkDay - 2, 90);
  add_visit(records, "2", kWorkDay + 4, 80);
  add_visit(records, "2", kWorkDay + 6, 90);
  const auto lines = services::work_lines(records, {}, day(2025, 7, 1));
  ASSERT_EQ(lines.size(), 1U);
  EXPECT_EQ(lines[0].losses_open, 1);
  // Green 2: 4 x 1 + 2 x 0.5 = 5.
  EXPECT_DOUBLE_EQ(*lines[0].mean_score_days, (20 + 5) / 2.0);
}

} // namespace
} // namespace baize::testing
