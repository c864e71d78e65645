// Expected values worked out by hand from the small clubs written here.
#include "baize/services/greens_review.h"
#include "unit/services_club.h"

#include <gtest/gtest.h>

namespace baize::testing {
namespace {

using services::greens_review;
using services::Trend;

TEST(GreensReview, SaysSoWhenThereIsNothing) {
  EXPECT_EQ(greens_review(club_of(0), {}, day(2025, 6, 1)).headline,
            "No green has been entered yet.");
  EXPECT_EQ(greens_review(club_of(1), {}, day(2025, 6, 1)).headline,
            "The only green has not been scored yet.");
  const auto review = greens_review(club_of(3), {}, day(2025, 6, 1));
  EXPECT_EQ(review.headline, "None of the 3 greens has been scored yet.");
  EXPECT_TRUE(review.years.empty());
  EXPECT_FALSE(review.median_speed_m);
  EXPECT_FALSE(review.greens[0].score);
  EXPECT_FALSE(review.greens[0].at_standard);
  EXPECT_FALSE(review.greens[0].last_visit);
  EXPECT_FALSE(review.greens[0].fast_but_not_true);
}

TEST(GreensReview, PointsOutFastButNotTrue) {
  auto records = club_of(3);
  add_visit(records, "1", day(2025, 5, 30), 85, 2.8);
  add_visit(records, "2", day(2025, 5, 30), 70, 3.2);
  add_visit(records, "3", day(2025, 5, 30), 80, 2.9);
  const auto review = greens_review(records, {}, day(2025, 6, 1));
  // Repeated balls of one length: the mean of both directions is that length.
  ASSERT_TRUE(review.median_speed_m);
  EXPECT_NEAR(*review.median_speed_m, 2.9, 0.02);
  EXPECT_FALSE(review.greens[0].fast_but_not_true);
  EXPECT_TRUE(review.greens[1].fast_but_not_true);
  EXPECT_FALSE(review.greens[2].fast_but_not_true) << "8.0 is at the standard of 8";
  EXPECT_EQ(review.headline,
            "2 of 3 greens were at the standard when last scored; 1 is fast but not true.");
  EXPECT_EQ(review.greens[1].days_since_visit, 2);
}

TEST(GreensReview, CountsOnlyScoredGreensInItsHeadline) {
  auto records = club_of(3);
  add_visit(records, "1", day(2025, 5, 30), 85);
  add_visit(records, "2", day(2025, 5, 30), std::nullopt, 3.0);
  EXPECT_EQ(greens_review(records, {}, day(2025, 6, 1)).headline,
            "The only scored green was at the standard when last scored; 2 greens have no score "
            "yet.");
  add_visit(records, "2", day(2025, 5, 31), 60);
  EXPECT_EQ(greens_review(records, {}, day(2025, 6, 1)).headline,
            "1 of 2 scored greens was at the standard when last scored; 1 is fast but not true; 1 "
            "green has no score yet.");
}

TEST(GreensReview, AllAndNone) {
  auto records = club_of(2);
  add_visit(records, "1", day(2025, 5, 30), 85);
  add_visit(records, "2", day(2025, 5, 30), 85);
  EXPECT_EQ(greens_review(records, {}, day(2025, 6, 1)).headline,
            "All 2 greens were at the standard when last scored.");
  add_visit(records, "1", day(2025, 5, 31), 75);
  add_visit(records, "2", day(2025, 5, 31), 75);
  EXPECT_EQ(greens_review(records, {}, day(2025, 6, 1)).headline,
            "None of the 2 greens was at the standard when last scored.");
}

TEST(GreensReview, TrendNeedsSixScoredDays) {
  auto records = club_of(1);
  for (int i = 0; i < 5; ++i) {
    add_visit(records, "1", day(2025, 5, 1 + i), i < 2 ? 80 : 84);
  }
  EXPECT_EQ(greens_review(records, {}, day(2025, 6, 1)).greens[0].trend, Trend::unknown);
  add_visit(records, "1", day(2025, 5, 10), 84);
  // 80 80 84 against 84 84 84: 8.4 less 8.1333.
  const auto steady = greens_review(records, {}, day(2025, 6, 1)).greens[0];
  EXPECT_EQ(steady.trend, Trend::steady);
  EXPECT_NEAR(*steady.trend_points, 0.8 / 3, 1e-12);
  add_visit(records, "1", day(2025, 5, 11), 70);
  add_visit(records, "1", day(2025, 5, 12), 70);
  EXPECT_EQ(greens_review(records, {}, day(2025, 6, 1)).greens[0].trend, Trend::worse);
  for (int i = 0; i < 4; ++i) {
    add_visit(records, "1", day(2025, 5, 13 + i), 90);
  }
  const auto better = greens_review(records, {}, day(2025, 6, 1)).greens[0];
  EXPECT_EQ(better.trend, Trend::better);
  EXPECT_EQ(better.recent_scores.size(), 12U);
  EXPECT_DOUBLE_EQ(better.recent_scores.back(), 9.0);
}

TEST(GreensReview, LeavesOutWhatIsStillToCome) {
  auto records = club_of(1);
  add_visit(records, "1", day(2025, 5, 1), 85, 2.8);
  add_visit(records, "1", day(2026, 5, 1), 60, 3.3);
  add_work(records, "coring", day(2025, 4, 1));
  add_work(records, "coring", day(2025, 9, 1));
  add_work(records, "rolling", day(2025, 5, 1));
  const auto review = greens_review(records, {}, day(2025, 6, 1));
  EXPECT_EQ(review.years, std::vector<int>{2025});
  EXPECT_DOUBLE_EQ(*review.greens[0].score, 8.5);
  EXPECT_EQ(review.greens[0].last_work, "2025-04-01/coring");
  EXPECT_EQ(review.greens[0].days_since_work, 61);
  EXPECT_EQ(review.greens[0].measured_true, 1);
  EXPECT_EQ(review.greens[0].open_days, 152) << "1 January to 1 June";
}

TEST(GreensReview, SpeedComesFromTheLastVisitThatHasOne) {
  auto records = club_of(1);
  add_visit(records, "1", day(2025, 5, 1), 85, 2.8);
  add_visit(records, "1", day(2025, 5, 3), 85);
  const auto card = greens_review(records, {}, day(2025, 6, 1)).greens[0];
  EXPECT_EQ(card.last_visit, day(2025, 5, 3));
  EXPECT_EQ(card.speed_day, day(2025, 5, 1));
}

} // namespace
} // namespace baize::testing
