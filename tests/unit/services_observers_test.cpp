// Sentences about observers, from small clubs.
#include "baize/services/observers_review.h"
#include "unit/observers_samples.h"

#include <gtest/gtest.h>

namespace {

using namespace observers_test;
using services::observers_review;

/// Six sessions of two balls; Ann scores a point above Bob but for one ball.
green::Records clear_case() {
  std::vector<green::Visit> visits;
  for (int month = 4; month < 10; ++month) {
    const auto on = *units::make_day(2025, month, 1);
    visits.push_back(visit("ann", on, "s", {8, month == 4 ? 8 : 7}));
    visits.push_back(visit("bob", on, "s", {7, 7}));
  }
  // Differences: 1 1, then 1 0 five times: mean 7/12.
  return club(visits);
}

TEST(ObserversReview, TheSentenceSaysHowMuchAndOnHowMany) {
  const auto review = observers_review(clear_case(), kToday);
  EXPECT_EQ(review.sessions, 6);
  EXPECT_EQ(review.balls, 12);
  ASSERT_EQ(review.observers.size(), 2U);
  // Without April the mean is 1/2, without another month 6/10: se^2 = 5/6 x 5/6 x
  // (1/10)^2, se = 1/12; t(0.975, 5) = 2.570582: 0.369 to 0.798.
  EXPECT_NEAR(review.observers[1].lean.bias.value, 7.0 / 12, 1e-12);
  EXPECT_NEAR(*review.observers[1].lean.bias.se, 1.0 / 12, 1e-12);
  EXPECT_EQ(review.observers[1].sentence,
            "ann scores 0.6 higher than bob (0.4 to 0.8 higher); 12 shared rolls.");
  EXPECT_EQ(review.observers[0].sentence,
            "bob scores 0.6 lower than ann (0.4 to 0.8 lower); 12 shared rolls.");
  EXPECT_EQ(review.sentence, review.observers[0].sentence) << "the first of equals";
  ASSERT_TRUE(review.observers[0].correction);
  EXPECT_NEAR(review.observers[0].correction->value, 7.0 / 12, 1e-12);
  ASSERT_EQ(review.pairs.size(), 1U);
  EXPECT_EQ(review.pairs[0].points.size(), 2U); // 7 and 8 seven times, 7 and 7 five
  EXPECT_EQ(review.pairs[0].points[1].items, 7);
  ASSERT_TRUE(review.pairs[0].needed);
  EXPECT_GT(review.pairs[0].needed->balls_for_limits, review.pairs[0].needed->balls_for_bias);
}

TEST(ObserversReview, NamesAreUsedWhereThereAreAny) {
  auto records = clear_case();
  records.observers[0].name = "B. Ash";
  EXPECT_EQ(observers_review(records, kToday).sentence.substr(0, 6), "B. Ash");
}

TEST(ObserversReview, WithoutSharedRollsItSaysWhatToDo) {
  EXPECT_EQ(observers_review(club({}), kToday).sentence,
            "Only one observer has scored here, so there is nobody to compare with.");
  auto records = club({visit("ann", day("2025-04-01"), "", {8, 7})});
  EXPECT_EQ(observers_review(records, kToday).sentence,
            "Only one observer has scored here, so there is nobody to compare with.");
  records.visits.push_back(visit("bob", day("2025-06-01"), "", {8, 7}));
  auto review = observers_review(records, kToday);
  EXPECT_EQ(review.sentence,
            "No two observers have scored the same balls yet: share a few rolls once a month.");
  EXPECT_EQ(review.observers[0].sentence, "bob shares no rolls with anybody.");
  records.visits[1].day = day("2025-04-02");
  review = observers_review(records, kToday);
  ASSERT_EQ(review.nearby.size(), 1U);
  EXPECT_EQ(review.nearby[0].sentence,
            "bob scores the same as ann so far, on too little to say more; 1 pair of visits "
            "within 2 days, not the same balls.");
}

TEST(ObserversReview, AllScoresEqualMakesNobodyDifferent) {
  auto records = clear_case();
  for (auto& one : records.visits) {
    for (auto& roll : one.runs[0].rolls) {
      roll.score = 8;
    }
  }
  const auto review = observers_review(records, kToday);
  EXPECT_EQ(review.sentence, "No observer can be told apart from the others over the same balls.");
  EXPECT_EQ(review.pairs[0].sentence,
            "bob and ann differ by the same 0.0 points each time; 12 shared rolls.");
}

TEST(ObserversReview, NothingOfTomorrowIsInIt) {
  EXPECT_EQ(observers_review(clear_case(), day("2025-03-31")).observers.size(), 0U);
  EXPECT_EQ(observers_review(clear_case(), day("2025-05-01")).sessions, 2);
}

} // namespace
