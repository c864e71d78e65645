#include "baize/recovery/work_loss.h"
#include "unit/recovery_records.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

namespace baize::recovery {
namespace {

using namespace baize::testing;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

const RecoveryInterval& interval(const WorkLoss& loss, Definition definition) {
  return loss.recovery.at(static_cast<std::size_t>(definition));
}

std::vector<WorkLoss> losses(const green::Records& records, const Options& options = {}) {
  return work_losses(records, {}, "7", day("2025-06-30"), options);
}

green::Records one_work() {
  auto records = testing::records();
  records.visits = {visit("b1", "2025-04-30", {8, 8, 8}), visit("a1", "2025-05-03", {5, 5, 5}),
                    visit("a2", "2025-05-05", {7, 7, 8}), visit("a3", "2025-05-09", {8, 8, 8}),
                    visit("a4", "2025-05-12", {9, 8, 8})};
  records.works = {work("w1", "coring", "2025-05-01")};
  return records;
}

TEST(WorkLosses, EveryFigureNamesItsVisits) {
  const auto all = losses(one_work());
  ASSERT_EQ(all.size(), 1U);
  EXPECT_EQ(all[0].kind, "coring");
  EXPECT_THAT(all[0].notes, ElementsAre()); // nothing out of the ordinary
  EXPECT_THAT(all[0].before_visits, ElementsAre("b1"));
  EXPECT_THAT(interval(all[0], Definition::at_standard).visits, ElementsAre("a2", "a3"));
  EXPECT_THAT(interval(all[0], Definition::two_running).visits, ElementsAre("a2", "a3", "a4"));
  EXPECT_THAT(interval(all[0], Definition::lasting).visits, ElementsAre("a2", "a3", "a4"));
  EXPECT_THAT(interval(all[0], Definition::own_level).visits, ElementsAre("a2", "a3"));
}

// 22 points in 3 are 7.33: below 8, but enough from the day on which 7 is the standard.
TEST(WorkLosses, SaysThatOnlyALowerStandardMadeItBack) {
  auto records = one_work();
  records.visits.pop_back();
  records.visits.pop_back();
  EXPECT_FALSE(losses(records)[0].back_at_lower_standard) << "not back at all";
  green::Standard low;
  low.score = 7;
  low.from = units::MonthDay{5, 4};
  low.to = units::MonthDay{12, 31};
  records.standards = {{}, low};
  auto again = records.visits.back();
  again.id = "a5";
  again.day = day("2025-05-07");
  records.visits.push_back(again);
  const auto all = losses(records);
  EXPECT_EQ(interval(all[0], Definition::two_running).by_days, 4);
  EXPECT_TRUE(all[0].back_at_lower_standard);
  EXPECT_THAT(
      all[0].notes,
      Contains("Back only since the standard fell: 7.33 on 2025-05-05 would not have met the "
               "standard of the work's day, 8."));
  EXPECT_FALSE(losses(one_work())[0].back_at_lower_standard);
}

TEST(WorkLosses, ToleranceMovesOwnLevelDepthAndArea) {
  Options options;
  options.own_level_tolerance = 1.0 / 3; // 8 - 1/3 = 23/3: the visit of 22 points in 3 is below
  auto all = losses(one_work(), options);
  EXPECT_EQ(interval(all[0], Definition::own_level).by_days, 8);
  options.own_level_tolerance = 0.7;
  all = losses(one_work(), options);
  EXPECT_EQ(interval(all[0], Definition::own_level).by_days, 4);
  // held back 2 x 3, then 2 x (3 + 0)/2: a day within the tolerance has no loss
  EXPECT_DOUBLE_EQ(all[0].area->score_days, 9);
  EXPECT_DOUBLE_EQ(*all[0].depth, 3);
  options.own_level_tolerance = 3;
  all = losses(one_work(), options);
  EXPECT_EQ(interval(all[0], Definition::own_level).by_days, 2);
  EXPECT_EQ(all[0].depth, 0);
  EXPECT_EQ(all[0].area->score_days, 0);
  EXPECT_EQ(interval(all[0], Definition::at_standard).by_days, 8);
}

TEST(WorkLosses, WindowHasItsWidth) {
  Options options;
  options.before_window_days = 1; // 30 April only
  EXPECT_TRUE(losses(one_work(), options)[0].before);
  auto records = one_work();
  records.visits[0].day = day("2025-04-29");
  EXPECT_FALSE(losses(records, options)[0].before);
  records.visits[0].day = day("2025-04-10"); // 21 days before
  EXPECT_EQ(losses(records)[0].before, 8);
  records.visits[0].day = day("2025-04-09");
  EXPECT_FALSE(losses(records)[0].before);
}

TEST(WorkLosses, NothingBeyondTheRecordIsKnown) {
  auto records = one_work();
  records.works.push_back(work("w2", "coring", "2025-05-10"));
  const auto all = work_losses(records, {}, "7", day("2025-05-08"), {});
  ASSERT_EQ(all.size(), 1U);
  EXPECT_EQ(all[0].horizon, day("2025-05-08"));
  EXPECT_EQ(all[0].horizon_reason, Censoring::record_ends);
  EXPECT_EQ(all[0].visits_after, 2);
  EXPECT_EQ(interval(all[0], Definition::lasting).censoring, Censoring::record_ends);
  EXPECT_TRUE(work_losses(records, {}, "7", day("2025-04-30"), {}).empty());
  EXPECT_TRUE(work_losses(records, {}, "8", day("2025-05-08"), {}).empty());
  EXPECT_TRUE(work_losses({}, {}, "7", day("2025-05-08"), {}).empty());
}

TEST(WorkLosses, OtherWorksLeaveItAlone) {
  auto records = one_work();
  records.works.push_back(work("r1", "rolling", "2025-05-04"));
  records.works.push_back(work("c1", "closed", "2025-05-06"));
  auto elsewhere = work("e1", "coring", "2025-05-04");
  elsewhere.greens = {"8"};
  records.works.push_back(elsewhere);
  const auto all = losses(records);
  ASSERT_EQ(all.size(), 1U);
  EXPECT_EQ(all[0].horizon_reason, Censoring::record_ends);
}

TEST(WorkLosses, HalvesMeetOnlyThroughTheWholeGreen) {
  auto records = one_work();
  records.works[0].half = "north";
  auto south = work("w2", "coring", "2025-05-04");
  south.half = "south";
  records.works.push_back(south);
  auto all = losses(records);
  ASSERT_EQ(all.size(), 2U);
  EXPECT_EQ(all[0].horizon, day("2025-06-30")); // the south half's work is not on this surface
  EXPECT_EQ(all[0].half, "north");
  EXPECT_FALSE(all[0].before); // every roll was made at a spot of no half
  records.works[0].half = "";
  all = losses(records);
  EXPECT_EQ(all[0].horizon, day("2025-05-03")); // part of the whole green was worked on
  EXPECT_EQ(all[0].horizon_reason, Censoring::next_work);
}

TEST(WorkLosses, WorkOfSeveralDays) {
  auto records = one_work();
  records.works[0].until = day("2025-05-04");
  records.works.push_back(work("w2", "coring", "2025-05-13"));
  auto all = losses(records);
  ASSERT_EQ(all.size(), 2U);
  EXPECT_EQ(interval(all[0], Definition::at_standard).by_days, 8); // from its first day
  EXPECT_THAT(all[0].notes, Contains(HasSubstr("went on until 2025-05-04")));
  EXPECT_THAT(all[1].before_visits, ElementsAre("a2", "a3", "a4")); // from 5 May on
  records.works[0].until = day("2025-05-12");
  all = losses(records);
  EXPECT_FALSE(all[1].before);
  EXPECT_THAT(all[1].notes, Contains(HasSubstr("leaves no day between")));
}

TEST(WorkLosses, SameMinuteIsNeitherBeforeNorAfter) {
  auto records = one_work();
  records.works[0].at = minute("08:00");
  records.visits[1].day = day("2025-05-01");
  const auto at = [&](const std::string& time) {
    records.visits[1].from = minute(time);
    return losses(records)[0];
  };
  EXPECT_EQ(at("07:59").before_visits.size(), 2U);
  EXPECT_EQ(at("07:59").visits_after, 3);
  EXPECT_EQ(at("08:00").before_visits.size(), 1U);
  EXPECT_EQ(at("08:00").visits_after, 3);
  EXPECT_THAT(at("08:00").notes, Contains(HasSubstr("whether a1 came before or after")));
  EXPECT_EQ(at("08:01").visits_after, 4);
  EXPECT_EQ(at("08:01").trough_day, day("2025-05-01"));
}

TEST(WorkLosses, AnEarlierWorkStillGoingOnLeavesNoBefore) {
  auto records = one_work();
  records.works[0].at = minute("08:00");
  records.visits[0].day = day("2025-05-01");
  records.visits[0].from = minute("06:00");
  EXPECT_EQ(losses(records)[0].before, 8);
  records.works.push_back(work("w9", "scarifying", "2025-04-29"));
  records.works[1].until = day("2025-04-30");
  EXPECT_EQ(losses(records)[1].before, 8);
  records.works[1].until = day("2025-05-01");
  EXPECT_FALSE(losses(records)[1].before);
}

TEST(WorkLosses, TroughIsTheFirstOfTheLowest) {
  auto records = one_work();
  records.visits[2] = visit("a2", "2025-05-05", {5, 5});
  EXPECT_EQ(losses(records)[0].trough_day, day("2025-05-03"));
}

TEST(WorkLosses, BetweenTwoWorksOfOneDayIsNeither) {
  auto records = one_work();
  records.works[0].at = minute("08:00");
  records.works.push_back(work("w2", "verticutting", "2025-05-01"));
  records.works[1].at = minute("13:00");
  records.visits[1].day = day("2025-05-01");
  records.visits[1].from = minute("10:00");
  for (const WorkLoss& loss : losses(records)) {
    EXPECT_EQ(loss.before_visits.size(), 1U);
    EXPECT_EQ(loss.visits_after, 3);
  }
  records.visits[1].from = minute("13:01");
  EXPECT_EQ(losses(records)[0].visits_after, 4);
  records.works[0].at.reset(); // one of them without a time: nothing can be told
  EXPECT_EQ(losses(records)[1].visits_after, 3);
}

TEST(WorkLosses, BackOnTheVeryDay) {
  auto records = one_work();
  records.works[0].at = minute("08:00");
  records.visits[1] = visit("a1", "2025-05-01", {8, 8, 8});
  records.visits[1].from = minute("15:00");
  const auto all = losses(records);
  const auto& back = interval(all[0], Definition::own_level);
  EXPECT_EQ(back.after_days, 0);
  EXPECT_EQ(back.by_days, 0);
  EXPECT_EQ(all[0].area->high, 0);
  EXPECT_EQ(all[0].trough, 8); // the dip of 5 May comes after it was back
}

TEST(WorkLosses, GrowthOfAMissingDayIsAbsent) {
  climate::Weather weather;
  for (units::Day d = day("2025-05-02"); d <= day("2025-05-12"); ++d) {
    weather[d].day = d;
    weather[d].tmean_c = 15; // growth potential 0.6615, tests/reference growth_potential.json GP2
  }
  const auto full = work_losses(one_work(), weather, "7", day("2025-06-30"), {});
  const auto& back = interval(full[0], Definition::at_standard);
  constexpr double kGrowth = 0.6615146556493746;
  EXPECT_NEAR(*back.after_growth_days, 4 * kGrowth, 1e-12);
  EXPECT_NEAR(*back.by_growth_days, 8 * kGrowth, 1e-12);
  EXPECT_NEAR(*full[0].area->growth_score_days, full[0].area->score_days * kGrowth, 1e-12);
  weather[day("2025-05-07")].tmean_c.reset();
  const auto gap = work_losses(one_work(), weather, "7", day("2025-06-30"), {});
  EXPECT_TRUE(interval(gap[0], Definition::at_standard).after_growth_days);
  EXPECT_FALSE(interval(gap[0], Definition::at_standard).by_growth_days);
  EXPECT_FALSE(gap[0].area->growth_score_days);
  EXPECT_EQ(gap[0].area->score_days, full[0].area->score_days);
}

// The area under a progress curve by trapezoids, sum of (y1 + y2)/2 x (t2 - t1): Campbell and
// Madden (1990), Introduction to Plant Disease Epidemiology, who take it from Shaner and Finney
// (1977), Phytopathology 67:1051-1056. From memory.
TEST(WorkLosses, AreaIsTheTrapezoidsOfPlantPathology) {
  const auto all = losses(one_work());
  const double held_back = 2 * 3.0;
  const double trapezoids = (3 + 2.0 / 3) / 2 * 2 + (2.0 / 3 + 0) / 2 * 4;
  EXPECT_NEAR(all[0].area->score_days, held_back + trapezoids, 1e-12);
}

TEST(LossOptions, RefuseWithTheRule) {
  Options options;
  EXPECT_TRUE(options.valid());
  options.before_window_days = 0;
  EXPECT_EQ(options.problem()->code, "before_window_out_of_range");
  EXPECT_TRUE(losses(one_work(), options).empty());
  options = {};
  options.before_window_days = 367;
  EXPECT_FALSE(options.valid());
  options = {};
  options.own_level_tolerance = -0.1;
  EXPECT_EQ(options.problem()->code, "tolerance_out_of_range");
  options.own_level_tolerance = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(options.valid());
  options = {};
  options.growth.spread_c = 0;
  EXPECT_EQ(options.problem(), options.growth.problem());
  EXPECT_FALSE(options.valid());
}

} // namespace
} // namespace baize::recovery
