// Expected values worked out by hand from the small clubs written here.
#include "baize/services/work_review.h"
#include "unit/services_club.h"

#include <gtest/gtest.h>

namespace baize::testing {
namespace {

using services::work_review;

const units::Day kWork = day(2025, 5, 20);
const std::string kCoring = "2025-05-20/coring";

/// 8.5 before; 6.5, 7.5 and 8.5 two, six and twelve days after.
void add_dip(green::Records& records, const std::string& green) {
  add_visit(records, green, kWork - 5, 85);
  add_visit(records, green, kWork + 2, 65);
  add_visit(records, green, kWork + 6, 75);
  add_visit(records, green, kWork + 12, 85);
  add_visit(records, green, kWork + 15, 85);
}

TEST(WorkReview, TellsOneGreenInTheSingular) {
  auto records = club_of(1);
  add_work(records, "coring", kWork);
  add_dip(records, "1");
  const auto review = work_review(records, {}, kCoring, day(2025, 7, 1));
  ASSERT_TRUE(review);
  // Held back to the work 2 x 2, then trapezoids 4 x 1.5 and 6 x 0.5: 13 score-days.
  EXPECT_EQ(review->sentence, "On 1 green the score fell by 2.0 points. 1 green was back at the "
                              "standard two visits running, "
                              "first seen so after 12 days. The loss came to 13 score-days.");
  ASSERT_EQ(review->greens.size(), 1U);
  ASSERT_EQ(review->greens[0].days.size(), 5U);
  EXPECT_EQ(review->greens[0].days[0].days_after, -5);
  EXPECT_DOUBLE_EQ(review->greens[0].days[1].score, 6.5);
  EXPECT_EQ(review->greens[0].days[1].rolls, 10);
}

TEST(WorkReview, GivesEachDayItsOwnStandard) {
  auto records = club_of(1);
  add_work(records, "coring", kWork);
  add_dip(records, "1");
  records.standards.push_back({"", units::MonthDay{1, 1}, units::MonthDay{12, 31}, 8, {}});
  const units::Day last = kWork + 12;
  const auto at = units::year_month_day(last);
  records.standards.push_back(
      {"1", units::MonthDay{at.month, at.day}, units::MonthDay{at.month, at.day}, 7, {}});
  const auto review = work_review(records, {}, kCoring, day(2025, 7, 1));
  ASSERT_TRUE(review);
  ASSERT_EQ(review->greens[0].days.size(), 5U);
  ASSERT_EQ(review->greens[0].days[3].day, last);
  EXPECT_EQ(review->greens[0].days[3].standard, 7);
  EXPECT_EQ(review->greens[0].days.front().standard, 8);
}

TEST(WorkReview, OwnsUpToWhatIsNotKnown) {
  auto records = club_of(4);
  add_work(records, "coring", kWork, {"1", "2", "3", "4"});
  add_dip(records, "1");
  add_visit(records, "2", kWork + 3, 70);
  add_visit(records, "3", kWork - 4, 90);
  const auto review = work_review(records, {}, kCoring, day(2025, 7, 1));
  ASSERT_TRUE(review);
  EXPECT_EQ(review->sentence,
            "On 1 green the score fell by 2.0 points. 1 green was back at the standard two visits "
            "running, "
            "first seen so after 12 days. 1 green was not yet back when last scored. The "
            "loss came to 13 score-days. No score before this work on 2 greens. No score after it "
            "on 2 greens.");
}

TEST(WorkReview, PutsGreensTogether) {
  auto records = club_of(4);
  add_work(records, "coring", kWork);
  for (const char* green : {"1", "2", "3"}) {
    add_dip(records, green);
  }
  add_visit(records, "4", kWork - 5, 85);
  add_visit(records, "4", kWork + 1, 84);
  add_visit(records, "4", kWork + 3, 84);
  const auto review = work_review(records, {}, kCoring, day(2025, 7, 1));
  ASSERT_TRUE(review);
  // Depths 2, 2, 2 and 0.1; green 4 lost 0.1 x 1 before its visit and 0.1 a day
  // to the record's end.
  EXPECT_TRUE(review->sentence.starts_with(
      "On 4 greens the score fell by 1.5 points on average (0.1 to 2.0 on single ones). 4 greens "
      "were back at the standard two visits running, first seen so after 1 to 12 days, half of "
      "them by day "
      "12. "))
      << review->sentence;
  EXPECT_NE(review->sentence.find("1 of them had not reached the score before"), std::string::npos)
      << review->sentence;
}

TEST(WorkReview, SaysWhenTheNextWorkCameFirst) {
  auto records = club_of(1);
  add_work(records, "coring", kWork);
  add_visit(records, "1", kWork - 5, 85);
  add_visit(records, "1", kWork + 2, 65);
  add_work(records, "verticutting", kWork + 10);
  const auto review = work_review(records, {}, kCoring, day(2025, 7, 1));
  ASSERT_TRUE(review);
  EXPECT_NE(review->sentence.find("1 green was not yet back when the next disruptive work began."),
            std::string::npos)
      << review->sentence;
}

TEST(WorkReview, SpeaksOfHalves) {
  auto records = club_of(1);
  records.greens[0].halves = {"front", "back"};
  records.greens[0].spots = {{"A", std::nullopt, "front"}, {"B", std::nullopt, "back"}};
  add_work(records, "coring", kWork).half = "front";
  add_dip(records, "1");
  const auto review = work_review(records, {}, kCoring, day(2025, 7, 1));
  ASSERT_TRUE(review);
  EXPECT_TRUE(review->sentence.starts_with("On 1 half green the score fell by 2.0 points."))
      << review->sentence;
}

TEST(WorkReview, FollowsNoLossOfPlansAndRoutine) {
  auto records = club_of(1);
  add_work(records, "rolling", kWork);
  add_work(records, "coring", day(2025, 9, 1));
  const auto routine = work_review(records, {}, "2025-05-20/rolling", day(2025, 7, 1));
  ASSERT_TRUE(routine);
  EXPECT_EQ(routine->sentence, "This work is not counted as disruptive, so no loss is followed.");
  EXPECT_TRUE(routine->greens.empty());
  const auto plan = work_review(records, {}, "2025-09-01/coring", day(2025, 7, 1));
  ASSERT_TRUE(plan);
  EXPECT_EQ(plan->sentence, "Planned for 1 September 2025; nothing is measured yet.");
  EXPECT_TRUE(plan->greens.empty());
}

TEST(WorkReview, RefusesAnUnknownWork) {
  const auto review = work_review(club_of(1), {}, "x", day(2025, 7, 1));
  ASSERT_FALSE(review);
  EXPECT_EQ(review.error().code, "no_such_work");
}

} // namespace
} // namespace baize::testing
