// Expected values worked out by hand from the small clubs written here.
#include "baize/services/season_review.h"
#include "unit/services_club.h"

#include <gtest/gtest.h>

namespace baize::testing {
namespace {

using services::season_review;

TEST(SeasonReview, RefusesWhatItCannotShow) {
  const auto records = club_of(1);
  const auto today = day(2025, 6, 1);
  EXPECT_EQ(season_review(records, {}, "9", 2025, today).error().code, "no_such_green");
  EXPECT_EQ(season_review(records, {}, "1", 1599, today).error().code, "no_such_year");
  EXPECT_EQ(season_review(records, {}, "1", 2601, today).error().code, "no_such_year");
  const auto early = season_review(records, {}, "1", 2026, today);
  ASSERT_FALSE(early);
  EXPECT_EQ(units::sentence(early.error()),
            "year is '2026', but must be a year that has begun by 2025-06-01.");
}

TEST(SeasonReview, EndsAtTodayOrTheYearsEnd) {
  const auto records = club_of(1);
  const auto open = season_review(records, {}, "1", 2025, day(2025, 6, 1));
  ASSERT_TRUE(open);
  EXPECT_EQ(open->period, (units::Period{day(2025, 1, 1), day(2025, 6, 1)}));
  EXPECT_EQ(open->ledger.unmeasured, 152);
  const auto ended = season_review(records, {}, "1", 2024, day(2025, 6, 1));
  ASSERT_TRUE(ended);
  EXPECT_EQ(ended->period.days(), 366);
}

TEST(SeasonReview, ShowsEachVisitWithItsRangeInOrderOfTime) {
  auto records = club_of(2);
  add_visit(records, "1", day(2025, 5, 9), std::nullopt, 3.0);
  add_visit(records, "2", day(2025, 5, 8), 90);
  green::Visit& single = add_visit(records, "1", day(2025, 5, 8), std::nullopt);
  green::Run run{"A", green::Direction::out, {}, std::nullopt, std::nullopt};
  for (const int score : {7, 9, 8}) {
    run.rolls.push_back(
        {static_cast<int>(run.rolls.size()) + 1, std::nullopt, std::nullopt, score});
  }
  single.runs.push_back(run);
  const auto season = season_review(records, {}, "1", 2025, day(2025, 6, 1));
  ASSERT_TRUE(season);
  ASSERT_EQ(season->visits.size(), 2U);
  EXPECT_EQ(season->visits[0].day, day(2025, 5, 8));
  EXPECT_DOUBLE_EQ(*season->visits[0].score, 8);
  EXPECT_DOUBLE_EQ(*season->visits[0].lowest, 7);
  EXPECT_DOUBLE_EQ(*season->visits[0].highest, 9);
  EXPECT_EQ(season->visits[0].scored_rolls, 3);
  EXPECT_FALSE(season->visits[0].speed);
  EXPECT_FALSE(season->visits[1].score);
  EXPECT_TRUE(season->visits[1].speed);
  EXPECT_EQ(season->ledger.measured_true, 1);
}

TEST(SeasonReview, ShowsWhereTheStandardChanges) {
  auto records = club_of(1);
  records.standards.push_back({"", std::nullopt, std::nullopt, 8, {}});
  records.standards.push_back({"", units::MonthDay{11, 1}, units::MonthDay{2, 28}, 7, {}});
  const auto season = season_review(records, {}, "1", 2025, day(2025, 12, 31));
  ASSERT_TRUE(season);
  ASSERT_EQ(season->standards.size(), 3U);
  EXPECT_EQ(season->standards[0].from, day(2025, 1, 1));
  EXPECT_EQ(season->standards[0].score, 7);
  EXPECT_EQ(season->standards[1].from, day(2025, 3, 1));
  EXPECT_EQ(season->standards[1].score, 8);
  EXPECT_EQ(season->standards[2].from, day(2025, 11, 1));
}

TEST(SeasonReview, CountsDaysWithoutATemperature) {
  auto weather = steady_weather({day(2025, 1, 1), day(2025, 1, 10)}, 20);
  weather[day(2025, 1, 4)].tmin_c.reset();
  const auto season = season_review(club_of(1), weather, "1", 2025, day(2025, 1, 12));
  ASSERT_TRUE(season);
  EXPECT_EQ(season->weather.size(), 10U);
  EXPECT_EQ(season->weather_days_missing, 3);
  EXPECT_FALSE(season->weather[3].growth);
  // Growth potential is 1 at its optimum, 20 degrees C for cool-season grass:
  // Gelernter and Stowell (2005).
  EXPECT_DOUBLE_EQ(*season->weather[0].growth, 1);
}

TEST(SeasonReview, TakesWorksAndFixturesOfItsTimeOnly) {
  auto records = club_of(2);
  add_work(records, "coring", day(2024, 9, 1));
  add_work(records, "coring", day(2025, 4, 1));
  add_work(records, "scarifying", day(2025, 4, 2), {"2"});
  add_work(records, "coring", day(2025, 9, 1)); // still a plan
  green::Work& frost = add_work(records, "closed", day(2024, 12, 30));
  frost.until = day(2025, 1, 2);
  green::Fixture fixture;
  fixture.id = "cup";
  fixture.days = {day(2025, 9, 20), day(2025, 9, 21)};
  records.fixtures.push_back(fixture);
  const auto season = season_review(records, {}, "1", 2025, day(2025, 6, 1));
  ASSERT_TRUE(season);
  ASSERT_EQ(season->works.size(), 2U);
  EXPECT_EQ(season->works[0].kind, "closed");
  EXPECT_EQ(season->works[1].work, "2025-04-01/coring");
  EXPECT_EQ(season->ledger.closed, 2);
  ASSERT_EQ(season->losses.size(), 1U);
  EXPECT_EQ(season->losses[0].work, "2025-04-01/coring");
  EXPECT_EQ(season->fixtures.size(), 1U);
}

TEST(WorkLabel, ShowsTheLeadingParameter) {
  green::Work work;
  work.kind = "coring";
  EXPECT_EQ(services::work_label(work), "coring");
  work.parameters = {{"depth", 75, ""}, {"tine_diameter", 12.5, ""}};
  EXPECT_EQ(services::work_label(work), "coring 12.5 mm");
  work.kind = "closed";
  work.parameters = {{"reason", std::nullopt, "frost"}};
  EXPECT_EQ(services::work_label(work), "closed: frost");
}

TEST(GrowthOptionsFor, FollowTheGrass) {
  EXPECT_EQ(services::growth_options_for(green::Grass::cool).optimum_c, 20);
  EXPECT_EQ(services::growth_options_for(green::Grass::warm).optimum_c, 31);
}

} // namespace
} // namespace baize::testing
