// Scores end at 10 and at 1: what rolls at a bound tell, and what a level scores.
#include "baize/season/bounded_score.h"
#include "baize/season/fit.h"
#include "baize/stats/distributions.h"
#include "baize/stats/random.h"
#include "bound.h"
#include "season_hand.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace baize {
namespace {

season::RunMean run_of(const std::vector<int>& scores) {
  season::RunMean run;
  for (const int score : scores) {
    run.score += score / static_cast<double>(scores.size());
    run.scored += 1;
    run.at_ten += score == 10 ? 1 : 0;
    run.at_one += score == 1 ? 1 : 0;
  }
  return run;
}

// Summed over the ten scores with their probabilities, apart from the formula.
double mean_score(double level, double sd) {
  double mean = 0;
  for (int score = 1; score <= 10; ++score) {
    const double from = score == 1 ? 0 : stats::normal_cdf((score - 0.5 - level) / sd);
    const double to = score == 10 ? 1 : stats::normal_cdf((score + 0.5 - level) / sd);
    mean += score * (to - from);
  }
  return mean;
}

TEST(SeasonBound, MeanOfScoresThatEndAtTen) {
  for (const double level : {0.0, 1.0, 4.7, 8.5, 9.5, 10.6}) {
    EXPECT_NEAR(season::bounded_score(level, 0.65), mean_score(level, 0.65), 1e-12) << level;
  }
  EXPECT_NEAR(season::bounded_score(5, 0.65), 5, 0.001);
  EXPECT_NEAR(season::bounded_score(9, 0.65) - 9, -0.011, 0.0005);
  EXPECT_LT(season::bounded_score(10, 0.65), 9.8) << "at 10 a quarter of a point is gone";
}

TEST(SeasonBound, TheLevelOfAScoreTurnsItBack) {
  for (const double level : {1.2, 5.0, 8.0, 9.4, 10.3}) {
    EXPECT_NEAR(season::level_of_score(season::bounded_score(level, 0.6), 0.6), level, 1e-6);
  }
  EXPECT_NEAR(season::level_of_score(10, 0.5), 12, 0.3) << "no roll tells what lies farther out";
}

TEST(SeasonBound, RollsInsideTellWhatTheyAre) {
  const season::Told told = season::told_by(run_of({7, 8, 9}), 0.65, 3, 0.25);
  EXPECT_DOUBLE_EQ(told.mean, 8);
  EXPECT_DOUBLE_EQ(told.rolls, 3);
}

// One roll at 10 upon a normal belief has moments in closed form: Rasmussen and
// Williams, Gaussian Processes for Machine Learning (2006), 3.9 (from memory).
TEST(SeasonBound, OneRollAtTenAsInClosedForm) {
  const double sd = 0.7;
  const double whole = season::unrounded(sd);
  for (const double near : {8.6, 9.5, 10.4}) {
    for (const double spread : {0.25, 0.6}) {
      const double total = std::hypot(whole, spread);
      const double z = (near - 9.5) / total;
      const double ratio =
          std::exp(-z * z / 2) / std::sqrt(2 * std::acos(-1.0)) / stats::normal_cdf(z);
      const double square = spread * spread;
      const double mean = near + square * ratio / total;
      const double variance = square - square * square * ratio / (total * total) * (z + ratio);
      const double precision = 1 / variance - 1 / square;
      const season::Told told = season::told_by(run_of({10}), sd, near, spread);
      EXPECT_NEAR(told.mean, (mean / variance - near / square) / precision, 1e-6);
      EXPECT_NEAR(told.rolls, precision * sd * sd, 1e-6);
      EXPECT_LT(told.rolls, 1) << "it tells less than a roll inside";
    }
  }
}

TEST(SeasonBound, OneAndTenAreMirrorImages) {
  const season::Told high = season::told_by(run_of({10, 10, 9}), 0.65, 9.2, 0.25);
  const season::Told low = season::told_by(run_of({1, 1, 2}), 0.65, 1.8, 0.25);
  EXPECT_NEAR(high.mean, 11 - low.mean, 1e-9);
  EXPECT_NEAR(high.rolls, low.rolls, 1e-9);
  EXPECT_GT(high.mean, 29.0 / 3);
}

// A green that falls by 3 points and comes back to 9.3 within three weeks, over and over:
// the looks around one near the top stand well below it, and must not pull it down.
TEST(SeasonBound, LossesThatEndNearTenKeepTheirDepth) {
  stats::Random random(11, 1);
  std::vector<testing::HandRun> runs;
  for (int day = 0; day < 360; day += 3) {
    const int since = day % 40 - 10;
    const double level = 9.3 - (since > 0 ? 3 * std::exp(-0.15 * since) : 0);
    testing::HandRun run{"7", day, 420, "ann", "main", green::Direction::out, {}};
    for (int ball = 0; ball < 6; ++ball) {
      const double seen = level + 0.6 * random.normal();
      run.scores.push_back(std::clamp(static_cast<int>(std::lround(seen)), 1, 10));
    }
    runs.push_back(run);
  }
  green::Records records = testing::hand_records(runs);
  for (int day = 10; day < 360; day += 40) {
    records.works.push_back(testing::hand_work("coring", day, "7", ""));
  }
  season::Options options;
  options.clock = season::Clock::calendar_days;
  const auto fit = season::fit_season(
      season::read_model(records, {}, testing::kHandFirst + 360, options), options);
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_NEAR(fit.methods.at(0).depth.value, 3, 0.12);
  EXPECT_NEAR(fit.methods.at(0).rate.value, 0.15, 0.02);
}

// Two observers half a point apart at a green where most rolls score 10: as the
// scores stand they seem a fifth of a point apart.
TEST(SeasonBound, ObserversKeepTheirDistanceNearTen) {
  stats::Random random(7, 1);
  std::vector<testing::HandRun> runs;
  double apart = 0;
  for (int day = 0; day < 200; ++day) {
    const bool first = day % 2 == 0;
    testing::HandRun run{"8", day, 420, first ? "ann" : "bea", "main", green::Direction::out, {}};
    for (int ball = 0; ball < 6; ++ball) {
      const double seen = (first ? 10.2 : 9.7) + 0.6 * random.normal();
      run.scores.push_back(std::clamp(static_cast<int>(std::lround(seen)), 1, 10));
      apart += (first ? 1 : -1) * run.scores.back() / 600.0;
    }
    runs.push_back(run);
  }
  // Rolls further down tell their scatter.
  for (int day = 0; day < 30; ++day) {
    testing::HandRun run{"7", day, 420, "ann", "main", green::Direction::out, {}};
    for (int ball = 0; ball < 6; ++ball) {
      run.scores.push_back(static_cast<int>(std::lround(6 + 0.6 * random.normal())));
    }
    runs.push_back(run);
  }
  const auto fit = season::fit_season(
      season::read_model(testing::hand_records(runs), {}, testing::kHandFirst + 200));
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_LT(apart, 0.3);
  EXPECT_NEAR(2 * fit.observers.at(0).above.value, 0.5, 0.1);
  EXPECT_FALSE(fit.notes.empty());
}

} // namespace
} // namespace baize
