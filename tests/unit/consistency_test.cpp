// Components, ranks, standings, directions and hours, worked by pencil.
#include "baize/consistency/directions.h"
#include "baize/consistency/hours.h"
#include "baize/consistency/nested.h"
#include "baize/consistency/rank.h"
#include "baize/consistency/standing.h"
#include "unit/observers_samples.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace observers_test;
using namespace baize::consistency;

constexpr double kEps = 1e-12;

// Groups a: 0 2 and b: 4. Within (1 + 1)/1 = 2; between 2 (1 - 2)^2 + (4 - 2)^2 = 6;
// n0 = 3 - 5/3 = 4/3; component (6 - 2)/(4/3) = 3.
TEST(Nested, TwoGroupsOfUnequalSize) {
  const auto found = nested_components({{{"a"}, 0}, {{"a"}, 2}, {{"b"}, 4}}, {"green", "ball"});
  ASSERT_TRUE(found.summary.usable);
  EXPECT_EQ(found.mean, 2);
  EXPECT_EQ(found.levels[0].ms, 6);
  EXPECT_EQ(found.levels[1].ms, 2);
  EXPECT_NEAR(found.levels[0].variance, 3, kEps);
  EXPECT_NEAR(found.levels[1].variance, 2, kEps);
  EXPECT_NEAR(found.levels[0].share, 0.6, kEps);
}

// Greens a: 0 2 and b: 0 2: between 0, within 2, component (0 - 2)/2 = -1, shown as 0.
TEST(Nested, NothingBetweenIsZeroAndNotLess) {
  const auto found =
      nested_components({{{"a"}, 0}, {{"a"}, 2}, {{"b"}, 0}, {{"b"}, 2}}, {"green", "ball"});
  EXPECT_EQ(found.levels[0].variance, 0);
  EXPECT_EQ(found.levels[1].share, 1);
}

TEST(Nested, Refuses) {
  const auto code = [](const std::vector<NestedValue>& values) {
    return nested_components(values, {"green", "ball"}).summary.problem.code;
  };
  EXPECT_EQ(code({}), "too_few");
  EXPECT_EQ(code({{{"a"}, 0}, {{"a"}, 2}}), "too_few");
  EXPECT_EQ(code({{{"a"}, 0}, {{"b"}, 2}}), "too_few");
  EXPECT_EQ(code({{{"a", "x"}, 0}}), "lengths_differ");
  EXPECT_EQ(code({{{"a"}, NAN}}), "not_finite");
  EXPECT_EQ(code({{{"a"}, 1}, {{"a"}, 1}, {{"b"}, 1}}), "all_equal");
}

// Ranks 1..5 against 2 1 4 3 5: 1 - 6 x 4 / (5 x 24) = 0.8.
TEST(Spearman, ByPencil) {
  EXPECT_NEAR(*spearman({1, 2, 3, 4, 5}, {20, 10, 40, 30, 50}), 0.8, kEps);
  EXPECT_NEAR(*spearman({1, 2, 3}, {-1, -2, -3}), -1, kEps);
  EXPECT_FALSE(spearman({1, 2}, {1, 2}));
  EXPECT_FALSE(spearman({1, 1, 1}, {1, 2, 3}));
  EXPECT_FALSE(spearman({1, 2, 3}, {1, 2}));
}

VisitFigures figures(std::size_t green, units::Day on, std::optional<double> score,
                     std::optional<int> minute = std::nullopt) {
  VisitFigures made;
  made.green = green;
  made.day = on;
  made.score = score;
  if (minute) {
    made.at = units::Minute{static_cast<std::int16_t>(*minute)};
  }
  return made;
}

// Each day the medians are 8: greens lie at 0, 0.1, -0.1, 0.2 and -3. Deviations from
// the median 0: MAD 0.1; z = 0.6745 x -3 / 0.1.
TEST(Standings, FindAGreenOutOfLine) {
  std::vector<VisitFigures> visits;
  const double off[] = {0, 0.1, -0.1, 0.2, -3};
  for (int i = 0; i < 3; ++i) {
    for (std::size_t green = 0; green < 5; ++green) {
      visits.push_back(figures(green, kToday - i, 8 + i * 0.5 + off[green]));
    }
  }
  visits.push_back(figures(0, kToday - 9, 2)); // alone on its day: compared with nobody
  const auto all = standings(visits, Quantity::score);
  ASSERT_EQ(all.size(), 5U);
  EXPECT_EQ(all[0].days, 3);
  EXPECT_NEAR(all[4].level, -3, kEps);
  EXPECT_NEAR(all[4].difference.value, -3, kEps);
  EXPECT_NEAR(*all[4].robust_z, -0.6745 * 30, 1e-9);
  EXPECT_TRUE(all[4].out_of_line);
  EXPECT_FALSE(all[3].out_of_line);
  EXPECT_TRUE(standings(visits, Quantity::speed).empty());
}

VisitFigures both_ways(units::Day on, double out, double back, double out_m, double back_m) {
  VisitFigures made = figures(0, on, (out + back) / 2);
  SpotFigures spot;
  spot.spot = "A";
  spot.runs = {{green::Direction::out, out, {}, out_m, 3},
               {green::Direction::back, back, {}, back_m, 3}};
  made.spots = {spot};
  return made;
}

// Scores differ by -1 -1 -2 -2 -1.5: mean -1.5, sd 0.5, t = -1.5 / (0.5 / sqrt 5) = -6.708.
// Slope: 100 x 7/5 x 1.8288^2 / (4 x 9.81) (1/2.8 - 1/3.2) = 11.93240 x 0.0446429 = 0.53270.
TEST(Directions, ScoreApartOnASteadySlope) {
  const double back[] = {9, 9, 9, 9, 9};
  const double out[] = {8, 8, 7, 7, 7.5};
  std::vector<VisitFigures> visits;
  for (int i = 0; i < 5; ++i) {
    visits.push_back(both_ways(kToday - i, out[i], back[i], 2.8, 3.2));
  }
  auto all = directions(visits);
  ASSERT_EQ(all.size(), 1U);
  EXPECT_NEAR(all[0].score.value, -1.5, kEps);
  EXPECT_NEAR(*all[0].score.se, 0.5 / std::sqrt(5.0), kEps);
  EXPECT_NEAR(*all[0].p, 0.002570261, 1e-8); // R: 2 * pt(-6.7082039, 4)
  EXPECT_EQ(all[0].p_all, all[0].p) << "one spot needs no correction";
  EXPECT_NEAR(all[0].rise.value, 0.53270, 1e-5);
  EXPECT_NEAR(*all[0].p_changing, 1, kEps);
  EXPECT_EQ(*all[0].rise_sd, 0);
  EXPECT_EQ(finding(all[0]), DirectionFinding::score_apart);
  visits[0].spots[0].runs[0].mean_m = 4.5; // this day the ball ran far the other way
  all = directions(visits);
  EXPECT_LT(*all[0].p_changing, 0.05);
  EXPECT_GT(*all[0].rise_sd, 0);
  EXPECT_EQ(finding(all[0]), DirectionFinding::changing);
}

TEST(Directions, TooFewAndAlike) {
  EXPECT_TRUE(directions({}).empty());
  auto all = directions({both_ways(kToday, 8, 8, 3, 3)});
  EXPECT_EQ(finding(all[0]), DirectionFinding::too_few);
  std::vector<VisitFigures> visits;
  for (int i = 0; i < 6; ++i) {
    visits.push_back(both_ways(kToday - i, 8, i % 2 == 0 ? 8.5 : 7.5, 3, i % 2 == 0 ? 3.05 : 2.95));
  }
  EXPECT_EQ(finding(directions(visits)[0]), DirectionFinding::alike);
}

// Mornings 8.0 and 9.0 about an afternoon of 8.0: -0.5. Another green: -1.5 with a
// morning before only. Mean -1; work in between drops the pair.
TEST(HourEffect, AfternoonBesideItsMornings) {
  green::Records records;
  records.greens.resize(2);
  records.greens[0].id = "1";
  records.greens[1].id = "2";
  std::vector<VisitFigures> visits{figures(0, kToday - 10, 8, 420), figures(0, kToday - 8, 8, 900),
                                   figures(0, kToday - 6, 9, 420), figures(1, kToday - 3, 8, 420),
                                   figures(1, kToday - 1, 6.5, 900)};
  auto found = hour_effect(records, visits);
  ASSERT_TRUE(found.summary.usable);
  EXPECT_EQ(found.score_pairs, 2);
  EXPECT_NEAR(found.score->value, -1, kEps);
  EXPECT_FALSE(found.score->interval) << "two greens tell no error";
  EXPECT_FALSE(found.speed);
  green::Work work;
  work.kind = "coring";
  work.greens = {"2"};
  work.day = kToday - 2;
  records.works.push_back(work);
  found = hour_effect(records, visits);
  EXPECT_EQ(found.score_pairs, 1);
  EXPECT_NEAR(found.score->value, -0.5, kEps);
  EXPECT_EQ(hour_effect(records, {}).summary.problem.code, "too_few");
  HourOptions silly;
  silly.days = -1;
  EXPECT_EQ(hour_effect(records, visits, silly).summary.problem.code, "option_out_of_range");
}

TEST(VisitFigures, SharedBallsCountOnce) {
  const auto all = visit_figures(three_sessions(), {day("2025-01-01"), kToday});
  ASSERT_EQ(all.size(), 3U);
  EXPECT_EQ(all[0].visit, "2025-04-01/ann/s1");
  EXPECT_EQ(*all[2].score, 8);
  EXPECT_EQ(all[2].spots[0].runs[0].balls.size(), 2U);
}

} // namespace
