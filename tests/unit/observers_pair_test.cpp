// Two observers over the same balls, worked by pencil.
#include "baize/observers/lean.h"
#include "baize/observers/needed.h"
#include "baize/observers/pair.h"
#include "baize/stats/concordance.h"
#include "baize/stats/icc.h"
#include "baize/stats/kappa.h"
#include "unit/observers_samples.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace observers_test;
using observers::lean_of;
using observers::needed;
using observers::pair_agreement;
using observers::shared_table;

constexpr double kEps = 1e-12;
// Student's t, 0.975, 2 degrees of freedom: R, qt(0.975, 2).
constexpr double kT2 = 4.302652729749464;

// Differences 0 0, 1 1, 2 2: mean 1; within 0; MSB = 2 (1 + 0 + 1)/2 = 2 and n0 = 2,
// so between (2 - 0)/2 = 1 and one difference has an sd of 1. Without a session
// the means are 1.5, 1, 0.5: se^2 = 2/3 (0.25 + 0 + 0.25) = 1/3.
TEST(PairAgreement, ThreeSessionsByPencil) {
  const auto table = shared_table(three_sessions(), kToday);
  const auto found = pair_agreement(table, "ann", "bob");
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_FALSE(found.of_runs);
  EXPECT_EQ(found.items, 6);
  EXPECT_EQ(found.balls, 6);
  EXPECT_EQ(found.sessions, 3);
  EXPECT_NEAR(found.bias.value, 1, kEps);
  EXPECT_NEAR(found.sd_within, 0, kEps);
  EXPECT_NEAR(found.sd_between, 1, kEps);
  EXPECT_NEAR(found.sd, 1, kEps);
  EXPECT_NEAR(*found.bias.se, std::sqrt(1.0 / 3), kEps);
  EXPECT_NEAR(found.bias.interval->low, 1 - kT2 * std::sqrt(1.0 / 3), 1e-9);
  EXPECT_NEAR(found.lower_limit.value, 1 - 1.96, kEps);
  EXPECT_NEAR(found.upper_limit.value, 1 + 1.96, kEps);
  // Without a session: sessions 1, 2: mean 1.5, MSB 2 (0.25 + 0.25) = 1, between 1/2;
  // 0, 2: mean 1, MSB 4, between 2; 0, 1: mean 0.5, between 1/2.
  const double half = std::sqrt(0.5);
  const double v[] = {1.5 + 1.96 * half, 1 + 1.96 * std::sqrt(2.0), 0.5 + 1.96 * half};
  const double mean = (v[0] + v[1] + v[2]) / 3;
  double squares = 0;
  for (const double one : v) {
    squares += (one - mean) * (one - mean);
  }
  EXPECT_NEAR(*found.upper_limit.se, std::sqrt(2.0 / 3 * squares), 1e-9);
  // log sd: 0, without a session -log(2)/2, log(2)/2, -log(2)/2: mean -log(2)/6, se^2 =
  // 2/3 log(2)^2 (1/9 + 4/9 + 1/9). The limit's ends: those of bias and 1.96 sd at right angles.
  const double sd_half = kT2 * std::log(2.0) * 2 / 3;
  const double bias_half = kT2 * std::sqrt(1.0 / 3);
  const double below = std::hypot(bias_half, 1.96 * (1 - std::exp(-sd_half)));
  const double above = std::hypot(bias_half, 1.96 * (std::exp(sd_half) - 1));
  EXPECT_NEAR(found.upper_limit.interval->low, 1 + 1.96 - below, 1e-9);
  EXPECT_NEAR(found.upper_limit.interval->high, 1 + 1.96 + above, 1e-9);
  EXPECT_NEAR(found.lower_limit.interval->low, 1 - 1.96 - above, 1e-9);
  EXPECT_NEAR(found.lower_limit.interval->high, 1 - 1.96 + below, 1e-9);
  EXPECT_NEAR(found.equal_share, 2.0 / 6, kEps);
  EXPECT_NEAR(found.within_one, 4.0 / 6, kEps);
  ASSERT_EQ(found.points.size(), 6U);
  EXPECT_EQ(found.points[4].difference, 2);
  EXPECT_EQ(found.points[4].mean, 8);
}

// Differences 0, 0, 1: without the third session nothing differs and log sd does not exist,
// so the limit keeps the interval of its own error.
TEST(PairAgreement, WhereOneSessionMakesAllTheSpread) {
  std::vector<green::Visit> visits;
  for (int i = 0; i < 3; ++i) {
    const std::string name = "s" + std::to_string(i);
    visits.push_back(visit("ann", day("2025-05-01") + i, name, {i < 2 ? 7 : 8, 7}));
    visits.push_back(visit("bob", day("2025-05-01") + i, name, {7, i < 2 ? 7 : 6}));
  }
  const auto found = pair_agreement(shared_table(club(visits), kToday), "ann", "bob");
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  const double half = kT2 * *found.upper_limit.se;
  EXPECT_NEAR(found.upper_limit.interval->low, found.upper_limit.value - half, 1e-9);
  EXPECT_NEAR(found.upper_limit.interval->high, found.upper_limit.value + half, 1e-9);
}

// Differences 1, -6 and 2: the spread's interval would reach past what two
// scores can differ by, and at the highest confidence past every number.
TEST(PairAgreement, NoSpreadIsTakenBeyondWhatScoresAllow) {
  std::vector<green::Visit> visits;
  const int own[] = {8, 1, 9};
  const int others[] = {7, 7, 7};
  for (int i = 0; i < 3; ++i) {
    const std::string name = "s" + std::to_string(i);
    visits.push_back(visit("ann", day("2025-05-01") + i, name, {own[i], own[i]}));
    visits.push_back(visit("bob", day("2025-05-01") + i, name, {others[i], others[i]}));
  }
  const auto found =
      pair_agreement(shared_table(club(visits), kToday), "ann", "bob", {1.96, 0.999999});
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  const double above =
      std::hypot(found.bias.interval->high - found.bias.value, 1.96 * (9 - found.sd));
  EXPECT_NEAR(found.upper_limit.interval->high, found.upper_limit.value + above, 1e-6);
}

// The coefficients from sums are those of core/stats, which published values hold.
TEST(PairAgreement, CoefficientsAreThoseOfTheWholeTable) {
  const auto table = shared_table(three_sessions(), kToday);
  const auto found = pair_agreement(table, "ann", "bob");
  const std::vector<double> ann{8, 6, 8, 7, 9, 7};
  const std::vector<double> bob{8, 6, 7, 6, 7, 5};
  stats::Ratings ratings;
  std::vector<int> first;
  std::vector<int> second;
  for (std::size_t i = 0; i < ann.size(); ++i) {
    ratings.push_back({ann[i], bob[i]});
    first.push_back(static_cast<int>(ann[i]));
    second.push_back(static_cast<int>(bob[i]));
  }
  EXPECT_NEAR(found.icc->value, stats::intraclass_correlation(ratings).random_single.value, kEps);
  EXPECT_NEAR(found.concordance->value, stats::concordance(ann, bob).coefficient, kEps);
  const auto counts = stats::cross_table(first, second, 1, 10).value();
  EXPECT_NEAR(found.kappa_quadratic->value,
              stats::cohen_kappa(counts, stats::KappaWeights::quadratic).value, kEps);
  EXPECT_NEAR(found.kappa_linear->value,
              stats::cohen_kappa(counts, stats::KappaWeights::linear).value, kEps);
  ASSERT_TRUE(found.icc->interval);
  EXPECT_LE(found.icc->interval->high, 1);
}

TEST(PairAgreement, TotalsAreComparedAsRuns) {
  auto records = three_sessions();
  for (auto& one : records.visits) {
    if (one.observer == "bob") {
      const int sum = *one.runs[0].rolls[0].score + *one.runs[0].rolls[1].score;
      one.runs = {total(green::Direction::out, sum, 2)};
    }
  }
  const auto found = pair_agreement(shared_table(records, kToday), "bob", "ann");
  EXPECT_TRUE(found.of_runs);
  EXPECT_EQ(found.items, 3);
  EXPECT_EQ(found.balls, 6);
  EXPECT_NEAR(found.bias.value, -1, kEps);
  EXPECT_NEAR(found.sd, 1, kEps); // 0, -1, -2
  EXPECT_FALSE(found.kappa_quadratic) << "means are no classes";
  EXPECT_TRUE(found.concordance);
}

TEST(PairAgreement, RefusesInOneSentence) {
  const auto table = shared_table(three_sessions(), kToday);
  const auto code = [&](const char* a, const char* b, observers::PairOptions options = {}) {
    const auto found = pair_agreement(table, a, b, options);
    EXPECT_FALSE(found.summary.usable);
    EXPECT_FALSE(found.summary.message.empty());
    return found.summary.problem.code;
  };
  EXPECT_EQ(code("ann", "zoe"), "unknown_observer");
  EXPECT_EQ(code("ann", "ann"), "shared_with_oneself");
  EXPECT_EQ(code("ann", "bob", {0, 0.95}), "option_out_of_range");
  EXPECT_EQ(code("ann", "bob", {1.96, 1}), "option_out_of_range");
  auto records = three_sessions();
  records.visits.resize(2);
  EXPECT_EQ(pair_agreement(shared_table(records, kToday), "ann", "bob").summary.problem.code,
            "no_shared_rolls");
}

TEST(PairAgreement, AllScoresEqualIsAFindingWithoutLimits) {
  std::vector<green::Visit> visits;
  for (int month = 4; month < 9; ++month) {
    const auto on = *units::make_day(2025, month, 1);
    visits.push_back(visit("ann", on, "s", {8, 8}));
    visits.push_back(visit("bob", on, "s", {8, 8}));
  }
  const auto found = pair_agreement(shared_table(club(visits), kToday), "ann", "bob");
  EXPECT_FALSE(found.summary.usable);
  EXPECT_EQ(found.summary.problem.code, "all_equal");
  EXPECT_EQ(found.bias.value, 0);
  EXPECT_EQ(found.equal_share, 1);
  EXPECT_FALSE(found.kappa_quadratic);
  EXPECT_FALSE(found.icc);
}

// Runs' differences of Ann from Bob: 0, 1, 2 by session. On time 0, 30 and 91 days;
// with x in days, Sxx = 30^2 + 91^2 -
// 121^2/3 = 9181 - 14641/3 = 12902/3; Sxy = 30 + 182 - 121 = 91; slope 273/12902 a day.
TEST(Lean, AgainstTheOthersByQuarterAndInTime) {
  const auto table = shared_table(three_sessions(), kToday);
  const auto lean = lean_of(table, "ann");
  ASSERT_TRUE(lean.summary.usable);
  EXPECT_EQ(lean.sessions, 3);
  EXPECT_EQ(lean.balls, 6);
  EXPECT_NEAR(lean.bias.value, 1, kEps);
  EXPECT_NEAR(*lean.bias.se, std::sqrt(1.0 / 3), kEps);
  ASSERT_EQ(lean.quarters.size(), 2U);
  EXPECT_EQ(lean.quarters[0].quarter, 2);
  EXPECT_NEAR(lean.quarters[0].bias.value, 0.5, kEps);
  EXPECT_FALSE(lean.quarters[0].bias.interval) << "two sessions tell no error";
  EXPECT_EQ(lean.quarters[1].quarter, 3);
  EXPECT_EQ(lean.quarters[1].balls, 2);
  ASSERT_TRUE(lean.trend);
  EXPECT_NEAR(lean.trend->per_year, 273.0 / 12902 * 365.25, 1e-9);
  EXPECT_NEAR(lean_of(table, "bob").bias.value, -1, kEps);
  const auto offered = correction(lean);
  ASSERT_TRUE(offered);
  EXPECT_NEAR(offered->value, -1, kEps);
  EXPECT_NEAR(offered->interval->high, -lean.bias.interval->low, kEps);
}

// Three observers: 8, 7 and 6 each time. Against the mean of the two others:
// 8 - 6.5, 7 - 7, 6 - 7.5.
TEST(Lean, IsFromTheMeanOfTheOthers) {
  std::vector<green::Visit> visits;
  for (int month = 4; month < 8; ++month) {
    const auto on = *units::make_day(2025, month, 1);
    visits.push_back(visit("ann", on, "s", {8}));
    visits.push_back(visit("bob", on, "s", {7}));
    visits.push_back(visit("cy", on, "s", {6}));
  }
  const auto table = shared_table(club(visits), kToday);
  EXPECT_NEAR(lean_of(table, "ann").bias.value, 1.5, kEps);
  EXPECT_NEAR(lean_of(table, "bob").bias.value, 0, kEps);
  EXPECT_NEAR(lean_of(table, "cy").bias.value, -1.5, kEps);
}

TEST(Lean, Refuses) {
  const auto table = shared_table(three_sessions(), kToday);
  EXPECT_EQ(lean_of(table, "cy").summary.problem.code, "unknown_observer");
  EXPECT_EQ(lean_of(table, "ann", 0).summary.problem.code, "option_out_of_range");
  EXPECT_FALSE(correction(lean_of(table, "cy")));
  EXPECT_EQ(lean_of(shared_table(club({}), kToday), "ann").summary.problem.code,
            "unknown_observer");
}

TEST(GroupAlpha, IsThatOfTheBalls) {
  const auto table = shared_table(three_sessions(), kToday);
  const auto alpha = group_alpha(table, stats::AlphaMetric::ordinal);
  ASSERT_TRUE(alpha.summary.usable);
  EXPECT_EQ(alpha.items, 6);
  std::vector<std::vector<std::optional<double>>> ratings{{8, 8}, {6, 6}, {8, 7},
                                                          {7, 6}, {9, 7}, {7, 5}};
  EXPECT_NEAR(alpha.estimate->value,
              stats::krippendorff_alpha(ratings, stats::AlphaMetric::ordinal).value, kEps);
  EXPECT_TRUE(alpha.estimate->interval);
  EXPECT_FALSE(
      group_alpha(shared_table(club({}), kToday), stats::AlphaMetric::ordinal).summary.usable);
}

// (1.959964 x 1 / 0.5)^2 = 15.37: 16 balls. For limits the least n with
// 1/n + 1.92080/(n - 1) <= (0.5/1.959964)^2 = 0.0650795: 45 gives 0.065877,
// 46 gives 0.064423. Two balls a session, half alike: design effect 1.5.
TEST(Needed, ByPencil) {
  observers::NeededOptions options;
  options.half_width = 0.5;
  options.balls = 2;
  auto found = needed(options);
  ASSERT_TRUE(found.summary.usable);
  EXPECT_EQ(found.balls_for_bias, 16);
  EXPECT_EQ(found.sessions_for_bias, 8);
  EXPECT_EQ(found.balls_for_limits, 46);
  options.likeness = 0.5;
  found = needed(options);
  EXPECT_EQ(found.design_effect, 1.5);
  EXPECT_EQ(found.balls_for_bias, 24);
  EXPECT_EQ(found.balls_for_limits, 69);
  EXPECT_EQ(found.sessions_for_limits, 35);
}

TEST(Needed, Refuses) {
  const auto code = [](observers::NeededOptions options) {
    return needed(options).summary.problem.code;
  };
  EXPECT_EQ(code({.sd = 0}), "option_out_of_range");
  EXPECT_EQ(code({.sd = NAN}), "option_out_of_range");
  EXPECT_EQ(code({.half_width = 10}), "option_out_of_range");
  EXPECT_EQ(code({.balls = 0}), "option_out_of_range");
  EXPECT_EQ(code({.likeness = 1.1}), "option_out_of_range");
  EXPECT_EQ(code({.sd = 9, .half_width = 1e-3}), "too_large");
}

} // namespace
