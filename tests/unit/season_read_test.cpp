// What the model makes of records, and what it refuses.
#include "baize/season/fit.h"
#include "season_hand.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace baize {
namespace {

using green::Direction;
using testing::HandRun;

std::vector<HandRun> runs(int visits, int spread = 2) {
  std::vector<HandRun> all;
  for (int i = 0; i < visits; ++i) {
    all.push_back(
        {"8", i * 3, 420, "ann", "main", Direction::out, {8, 8 + i % spread, 7 + i % spread}});
  }
  return all;
}

season::Model read(const green::Records& records, int end = 200) {
  return season::read_model(records, {}, testing::kHandFirst + end);
}

TEST(SeasonRead, TooFewVisitsSayHowManyAreNeeded) {
  const auto model = read(testing::hand_records(runs(9)));
  EXPECT_FALSE(model.summary.usable);
  EXPECT_EQ(model.summary.problem.code, "too_few_visits");
  EXPECT_THAT(model.summary.message, ::testing::HasSubstr("at least 10"));
  EXPECT_TRUE(read(testing::hand_records(runs(10))).summary.usable);
}

TEST(SeasonRead, EqualScoresTellNothing) {
  std::vector<HandRun> all;
  for (int i = 0; i < 12; ++i) {
    all.push_back({"8", i, 420, "ann", "main", Direction::out, {8, 8, 8}});
  }
  EXPECT_EQ(read(testing::hand_records(all)).summary.problem.code, "all_scores_equal");
}

TEST(SeasonRead, OptionsAreChecked) {
  season::Options options;
  options.draws = 10;
  const auto model =
      season::read_model(testing::hand_records(runs(12)), {}, testing::kHandFirst + 99, options);
  EXPECT_EQ(model.summary.problem.code, "option_out_of_range");
  EXPECT_EQ(model.summary.problem.field, "draws");
}

TEST(SeasonRead, WithoutWeatherLossesRunOnCalendarDays) {
  const auto model = read(testing::hand_records(runs(12)));
  EXPECT_EQ(model.clock, season::Clock::calendar_days);
  EXPECT_THAT(model.notes, ::testing::Contains(::testing::HasSubstr("calendar days")));
}

TEST(SeasonRead, WorksToComeAreLeftOut) {
  green::Records records = testing::hand_records(runs(12));
  records.works = {testing::hand_work("coring", 6, "", ""),
                   testing::hand_work("scarifying", 300, "", "")};
  const auto model = read(records);
  ASSERT_EQ(model.greens.size(), 1U);
  ASSERT_EQ(model.greens[0].losses.size(), 1U);
  EXPECT_EQ(model.methods, std::vector<std::string>{"coring"});
}

TEST(SeasonRead, WorksOfOneDayAreOneLoss) {
  green::Records records = testing::hand_records(runs(12));
  records.works = {testing::hand_work("scarifying", 6, "", ""),
                   testing::hand_work("coring", 6, "", "")};
  const auto model = read(records);
  ASSERT_EQ(model.greens[0].losses.size(), 1U);
  EXPECT_EQ(model.greens[0].losses[0].label, "coring + scarifying");
  EXPECT_EQ(model.greens[0].losses[0].works.size(), 2U);
}

TEST(SeasonRead, AVisitOnTheWorksDayGoesByTheClock) {
  green::Records records = testing::hand_records(runs(12));  // 07:00 on days 0, 3 ...
  records.works = {testing::hand_work("coring", 6, "", "")}; // 08:00
  EXPECT_LT(read(records).greens[0].growth(2, 0), 0);
  records.works[0].at = units::Minute{300};
  EXPECT_EQ(read(records).greens[0].growth(2, 0), 0);
  records.works[0].at.reset();
  const auto model = read(records);
  EXPECT_EQ(model.greens[0].looks.size(), 11U);
  EXPECT_THAT(model.notes, ::testing::Contains(::testing::HasSubstr("day of a work")));
}

TEST(SeasonRead, ScatterOfRollsComesFromWithinRuns) {
  // Runs {8, 8, 7} and {8, 9, 8} in turn: each has a sum of squares of 2/3 over 2
  // degrees of freedom, so the sd is root(1/3).
  const auto model = read(testing::hand_records(runs(24)), 300);
  EXPECT_NEAR(model.roll_sd, std::sqrt(1.0 / 3), 1e-12);
  EXPECT_EQ(model.roll_sd_rolls, 72);
}

TEST(SeasonFit, SaysWhatTheRecordsCannotTell) {
  green::Records records = testing::hand_records(runs(30));
  records.works = {testing::hand_work("coring", 0, "", "")};
  records.works[0].at = units::Minute{60};
  season::Options options;
  options.draws = 100;
  const auto fit = season::fit_season(
      season::read_model(records, {}, testing::kHandFirst + 99, options), options);
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_THAT(fit.notes, ::testing::Contains(::testing::HasSubstr("One observer only")));
  EXPECT_THAT(fit.notes, ::testing::Contains(::testing::HasSubstr("no score in the 60 days")));
}

TEST(SeasonFit, StopsWhenToldTo) {
  const auto model = read(testing::hand_records(runs(30)));
  const auto fit = season::fit_season(model, {}, [](double) { return false; });
  EXPECT_EQ(fit.summary.termination, stats::Termination::stopped);
  EXPECT_TRUE(fit.draws.empty());
}

} // namespace
} // namespace baize
