#include "baize/stats/fleiss_kappa.h"
#include "baize/stats/kappa.h"
#include "baize/stats/krippendorff.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace baize;
using stats::AlphaMetric;
using stats::KappaWeights;
using Ratings = std::vector<std::vector<std::optional<double>>>;

// By pencil: agreement 0.7, chance 0.5 * 0.6 + 0.5 * 0.4 = 0.5: kappa 0.4.
// Null variance for 2 by 2: (pe + pe^2 - sum p[i.] p[.i] (p[i.] + p[.i]))
// / (n (1 - pe)^2) = (0.5 + 0.25 - 0.51) / (50 * 0.25).
TEST(Kappa, OfTwoByTwo) {
  const auto found = stats::cohen_kappa({{20, 5}, {10, 15}}, KappaWeights::none);
  ASSERT_TRUE(found.summary.usable);
  EXPECT_EQ(found.n, 50);
  EXPECT_NEAR(found.observed, 0.7, 1e-15);
  EXPECT_NEAR(found.expected, 0.5, 1e-15);
  EXPECT_NEAR(found.value, 0.4, 1e-15);
  EXPECT_NEAR(found.null_se * found.null_se, 0.24 / 12.5, 1e-14);
}

double value_of(const stats::Table& counts, KappaWeights weights) {
  return stats::cohen_kappa(counts, weights).value;
}

// Twelve items, left out one after the other; t(0.975; 11) = 2.20098516.
TEST(Kappa, HasTheIntervalOfLeavingOneItemOut) {
  const stats::Table counts{{6, 1}, {2, 3}};
  std::vector<double> less;
  for (std::size_t i = 0; i < 2; ++i) {
    for (std::size_t j = 0; j < 2; ++j) {
      auto without = counts;
      without[i][j] -= 1;
      less.insert(less.end(), static_cast<std::size_t>(counts[i][j]),
                  value_of(without, KappaWeights::none));
    }
  }
  double mean = 0;
  for (const double one : less) {
    mean += one / 12;
  }
  double squares = 0;
  for (const double one : less) {
    squares += (one - mean) * (one - mean);
  }
  const double error = std::sqrt(11.0 / 12 * squares);
  const auto found = stats::cohen_kappa(counts, KappaWeights::none);
  EXPECT_NEAR(found.value, 8.0 / 17, 1e-15); // (3/4 - 19/36) / (17/36)
  const double half = 2.20098516 * error / (1 - found.value * found.value);
  ASSERT_TRUE(found.interval);
  EXPECT_NEAR(found.interval->low, std::tanh(std::atanh(found.value) - half), 1e-8);
  EXPECT_NEAR(found.interval->high, std::tanh(std::atanh(found.value) + half), 1e-8);
}

TEST(Kappa, HasNoIntervalWhereOneItemDecides) {
  // Without the single 1 the second observer gave one answer only.
  EXPECT_FALSE(stats::cohen_kappa({{5, 0}, {3, 1}}, KappaWeights::none).interval);
  EXPECT_FALSE(stats::cohen_kappa({{5.5, 1}, {2, 3}}, KappaWeights::none).interval);
}

// The delta method done by brute force: the variance of a function of a
// multinomial sample from its slopes, which the closed formula must equal.
TEST(Kappa, HasTheErrorOfItsSlopes) {
  const stats::Table counts{{11, 4, 1}, {3, 9, 5}, {0, 2, 12}};
  const double n = 47;
  for (const auto weights : {KappaWeights::none, KappaWeights::linear, KappaWeights::quadratic}) {
    double mean = 0;
    double square = 0;
    for (std::size_t i = 0; i < 3; ++i) {
      for (std::size_t j = 0; j < 3; ++j) {
        if (counts[i][j] == 0) {
          continue; // an empty cell has no part in the variance
        }
        const double h = 1e-4;
        auto more = counts;
        more[i][j] += h;
        auto less = counts;
        less[i][j] -= h;
        const double slope = (value_of(more, weights) - value_of(less, weights)) / (2 * h);
        mean += counts[i][j] / n * slope;
        square += counts[i][j] / n * slope * slope;
      }
    }
    const double variance = n * (square - mean * mean);
    EXPECT_NEAR(stats::cohen_kappa(counts, weights).se, std::sqrt(variance), 1e-7);
  }
}

TEST(Kappa, OfCompleteAgreementIsOneWithoutInterval) {
  const auto found = stats::cohen_kappa({{5, 0}, {0, 7}}, KappaWeights::quadratic);
  ASSERT_TRUE(found.summary.usable);
  EXPECT_NEAR(found.value, 1, 1e-15);
  EXPECT_FALSE(found.interval.has_value());
}

TEST(Kappa, OfAnObserverWithOneAnswerIsDegenerate) {
  const auto found = stats::cohen_kappa({{5, 3}, {0, 0}}, KappaWeights::none);
  EXPECT_EQ(found.summary.termination, stats::Termination::degenerate);
  EXPECT_EQ(found.summary.message,
            "first observer is 'one and the same answer throughout', but must be at least two "
            "different answers, since chance is judged by them.");
}

TEST(CrossTable, CountsPairs) {
  const auto table = stats::cross_table(std::vector{7, 8, 8}, std::vector{8, 8, 8}, 7, 9);
  ASSERT_TRUE(table.has_value());
  EXPECT_EQ(*table, (stats::Table{{0, 1, 0}, {0, 2, 0}, {0, 0, 0}}));
  const auto outside = stats::cross_table(std::vector{7, 11}, std::vector{8, 8}, 1, 10);
  ASSERT_FALSE(outside.has_value());
  EXPECT_EQ(units::sentence(outside.error()), "pair 2: score is '11', but must be from 1 to 10.");
}

// By pencil: items 2 0, 1 1, 0 2: agreement (1 + 0 + 1) / 3, chance 1/2: kappa 1/3.
// Null error: sum p q = 1/2, lopsided 0: sqrt(2 / (3 * 2)) = 0.57735.
// By items: 1, -1, 1 about 1/3, chance the same for each: squares 8/3, over n (n - 1) = 6.
TEST(FleissKappa, OfThreeItems) {
  const auto found = stats::fleiss_kappa({{2, 0}, {1, 1}, {0, 2}});
  ASSERT_TRUE(found.summary.usable);
  EXPECT_NEAR(found.value, 1.0 / 3, 1e-15);
  EXPECT_NEAR(found.null_se, std::sqrt(1.0 / 3), 1e-14);
  EXPECT_NEAR(found.se * found.se, 8.0 / 18, 1e-14);
}

TEST(FleissKappa, HasNearlyTheErrorOfLeavingOneOut) {
  std::vector<std::vector<double>> counts;
  for (int i = 0; i < 60; ++i) {
    const double first = i % 5;
    const double second = (i * i) % 3 % static_cast<int>(5 - first);
    counts.push_back({first, second, 4 - first - second});
  }
  const auto whole = stats::fleiss_kappa(counts);
  ASSERT_TRUE(whole.summary.usable);
  double squares = 0;
  for (std::size_t i = 0; i < counts.size(); ++i) {
    auto without = counts;
    without.erase(without.begin() + static_cast<std::ptrdiff_t>(i));
    const double apart = stats::fleiss_kappa(without).value - whole.value;
    squares += apart * apart;
  }
  EXPECT_NEAR(whole.se, std::sqrt(squares * 59 / 60), 0.03 * whole.se);
}

// By pencil: items 1 1, 1 2, 2 2 (three each of 1 and 2): observed 2 / 6,
// expected 2 * 9 / 30 = 0.6: alpha 1 - (1/3) / 0.6 = 4/9, by any metric but ratio
// the same, since there are only two values.
TEST(KrippendorffAlpha, OfTwoValues) {
  const Ratings ratings{{1, 1}, {1, 2}, {2, 2}};
  for (const auto metric :
       {AlphaMetric::nominal, AlphaMetric::ordinal, AlphaMetric::interval, AlphaMetric::ratio}) {
    const auto found = stats::krippendorff_alpha(ratings, metric);
    ASSERT_TRUE(found.summary.usable);
    EXPECT_NEAR(found.value, 4.0 / 9, 1e-14);
  }
}

TEST(KrippendorffAlpha, LeavesOutItemsScoredOnce) {
  const Ratings ratings{{1, 1}, {1, 2}, {2, 2}};
  auto gaps = ratings;
  gaps.push_back({9, std::nullopt});
  gaps.push_back({std::nullopt, std::nullopt});
  const auto a = stats::krippendorff_alpha(ratings, AlphaMetric::interval);
  const auto b = stats::krippendorff_alpha(gaps, AlphaMetric::interval);
  EXPECT_EQ(a.value, b.value);
  EXPECT_EQ(a.se, b.se);
  EXPECT_EQ(b.items, 3);
  EXPECT_EQ(b.values, 6);
}

// By pencil: without either end item alpha is 0 (observed 1/2, expected 1/2), without the
// middle one 1; the sum of squares about 1/3 is 2/3, times (n - 1) / n.
TEST(KrippendorffAlpha, HasTheErrorOfLeavingOneOut) {
  const auto found = stats::krippendorff_alpha({{1, 1}, {1, 2}, {2, 2}}, AlphaMetric::nominal);
  ASSERT_TRUE(found.se.has_value());
  EXPECT_NEAR(*found.se, 2.0 / 3, 1e-14);
}

TEST(KrippendorffAlpha, OfCompleteAgreementIsOne) {
  const auto found = stats::krippendorff_alpha({{7, 7}, {8, 8}, {6, 6}}, AlphaMetric::ratio);
  ASSERT_TRUE(found.summary.usable);
  EXPECT_EQ(found.value, 1);
  EXPECT_FALSE(found.interval.has_value());
}

} // namespace
