#include "baize/stats/distributions.h"
#include "baize/stats/dunnett.h"
#include "baize/stats/mean_comparisons.h"
#include "baize/stats/random.h"
#include "baize/stats/studentized_range.h"
#include "unit/special.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace {

using namespace baize::stats;
using Values = std::vector<double>;
using Letters = std::vector<std::string>;
using Pairs = std::vector<std::pair<std::size_t, std::size_t>>;
using special::kInfinity;

// Pencil: 9 8 6 5, all pairs further apart than 2 differ.
TEST(CompactLetters, ByPencil) {
  EXPECT_EQ(compact_letters({5, 9, 6, 8}, {{0, 1}, {1, 2}, {0, 3}}),
            (Letters{"c", "a", "bc", "ab"}));
  EXPECT_EQ(compact_letters({1, 2, 3}, {}), (Letters{"a", "a", "a"}));
  EXPECT_EQ(compact_letters({1, 2, 3}, {{0, 1}, {0, 2}, {1, 2}}), (Letters{"c", "b", "a"}));
  // Means with errors of their own need not follow in order: 3 differs from 2 only.
  EXPECT_EQ(compact_letters({1, 2, 3}, {{1, 2}}), (Letters{"ab", "b", "a"}));
  EXPECT_TRUE(compact_letters({1, 2}, {{0, 2}}).empty());
}

bool share(const std::string& a, const std::string& b) {
  return a.find_first_of(b) != std::string::npos;
}

RC_GTEST_PROP(CompactLettersLaws, ALetterIsSharedIfAndOnlyIfNotToldApart, ()) {
  const auto size = *rc::gen::inRange<std::size_t>(2, 9);
  const auto means = *rc::gen::container<Values>(
      size, rc::gen::map(rc::gen::inRange(0, 50), [](int x) { return x / 4.0; }));
  std::set<std::pair<std::size_t, std::size_t>> apart;
  for (std::size_t i = 0; i < size; ++i) {
    for (std::size_t k = i + 1; k < size; ++k) {
      if (*rc::gen::arbitrary<bool>()) {
        apart.emplace(i, k);
      }
    }
  }
  const Letters letters = compact_letters(means, Pairs(apart.begin(), apart.end()));
  RC_ASSERT(letters.size() == size);
  for (std::size_t i = 0; i < size; ++i) {
    RC_ASSERT(!letters[i].empty());
    for (std::size_t k = i + 1; k < size; ++k) {
      RC_ASSERT(share(letters[i], letters[k]) == (apart.count({i, k}) == 0));
    }
  }
  const auto best = std::max_element(means.begin(), means.end()) - means.begin();
  RC_ASSERT(letters[static_cast<std::size_t>(best)][0] == 'a');
}

// Pencil: variance 4 and 8 values: standard errors 1 between means; t by hand.
TEST(CompareMeans, FisherIsTheTTest) {
  const Values means{10, 13, 12.5};
  const auto found = compare_means(means, pair_differences(means, {8, 8, 8}, 4, 21),
                                   {PairMethod::least_significant_difference, 0.05});
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  ASSERT_EQ(found.pairs.size(), 3U);
  EXPECT_DOUBLE_EQ(found.pairs[0].standard_error, 1);
  EXPECT_NEAR(found.pairs[0].p, 2 * t_upper(3, 21), 1e-15);
  EXPECT_NEAR(found.least_difference.value(), t_quantile(0.975, 21), 1e-12);
  EXPECT_TRUE(found.pairs[0].significant);
  EXPECT_FALSE(found.pairs[2].significant);
  EXPECT_EQ(found.letters, (Letters{"b", "a", "a"}));
  EXPECT_NEAR(found.pairs[1].interval.low, -2.5 - t_quantile(0.975, 21), 1e-12);
}

TEST(CompareMeans, TukeyWithTwoMeansIsTheTTest) {
  const Values means{10, 12};
  const auto found = compare_means(means, pair_differences(means, {5, 9}, 4, 12));
  ASSERT_TRUE(found.summary.usable);
  const double t = 2 / std::sqrt(4 * (1 / 5.0 + 1 / 9.0));
  EXPECT_NEAR(found.pairs[0].p, 2 * t_upper(t, 12), 1e-11);
  EXPECT_NEAR(found.least_difference.value(), 2 / t * t_quantile(0.975, 12), 1e-9);
}

TEST(CompareMeans, TukeyIsNeverBolderThanFisher) {
  const Values means{3, 5, 4, 9, 7};
  const auto pairs = pair_differences(means, {4, 6, 5, 4, 3}, 2.5, 17);
  const auto tukey = compare_means(means, pairs);
  const auto fisher = compare_means(means, pairs, {PairMethod::least_significant_difference, 0.05});
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    EXPECT_GT(tukey.pairs[i].p, fisher.pairs[i].p);
    EXPECT_EQ(tukey.pairs[i].significant, tukey.pairs[i].p < 0.05);
  }
  EXPECT_FALSE(tukey.least_difference);
}

TEST(CompareMeans, RefusesInOneSentence) {
  const Values means{3, 5, 4};
  const auto good = pair_differences(means, {4, 4, 4}, 2.5, 9);
  const auto code = [](const Values& m, const std::vector<PairDifference>& p, double alpha = 0.05) {
    const auto found = compare_means(m, p, {PairMethod::tukey, alpha});
    EXPECT_FALSE(found.summary.usable);
    EXPECT_FALSE(found.summary.problem.rule.empty());
    return found.summary.problem.code;
  };
  EXPECT_EQ(code(means, good, 1), "option_out_of_range");
  EXPECT_EQ(code({1}, {}), "too_few");
  EXPECT_EQ(code(Values(201, 1), {}), "too_many");
  EXPECT_EQ(code({1, kInfinity, 2}, good), "not_finite");
  EXPECT_EQ(code(means, {good[0], good[1]}), "pairs_incomplete");
  EXPECT_EQ(code(means, {good[0], good[1], good[1]}), "pairs_incomplete");
  auto bad = good;
  bad[1].standard_error = 0;
  EXPECT_EQ(code(means, bad), "standard_error_out_of_range");
}

// One treatment: the t test. Without correlation (a control of many values): the
// product of independent ones.
TEST(Dunnett, EndsInKnownCases) {
  EXPECT_NEAR(dunnett_upper(2.1, {0.6}, 14), 2 * t_upper(2.1, 14), 1e-13);
  EXPECT_NEAR(dunnett_upper(2.1, {0.6}, 14, false), t_upper(2.1, 14), 1e-13);
  EXPECT_NEAR(dunnett_upper(9, {0.9}, 14) / (2 * t_upper(9, 14)), 1, 1e-11);
  EXPECT_NEAR(dunnett_upper(7, {0.9}, kInfinity) / (2 * normal_upper(7)), 1, 1e-11);
  const double each = 2 * normal_upper(1.7);
  EXPECT_NEAR(dunnett_upper(1.7, {1e-6, 1e-6, 1e-6}, kInfinity), 1 - std::pow(1 - each, 3), 1e-10);
  EXPECT_NEAR(dunnett_critical(0.05, {0.7}, 9), t_quantile(0.975, 9), 1e-10);
  EXPECT_TRUE(std::isnan(dunnett_upper(1, {1}, 9)));
  EXPECT_TRUE(std::isnan(dunnett_upper(1, {0.5}, 0.5)));
  EXPECT_TRUE(std::isnan(dunnett_critical(0.6, {0.5}, 9, false)));
  EXPECT_EQ(dunnett_upper(0, {0.5}, 9), 1);
}

// Draws of the definition, within five standard errors of a share.
TEST(Dunnett, AgreesWithDraws) {
  Random random(11);
  const Values lambda{std::sqrt(4 / 12.), std::sqrt(9 / 17.), std::sqrt(3 / 11.)};
  constexpr int kDraws = 60000;
  constexpr int kDf = 6;
  int beyond = 0;
  for (int i = 0; i < kDraws; ++i) {
    const double z = random.normal();
    double sum = 0;
    for (int k = 0; k < kDf; ++k) {
      const double error = random.normal();
      sum += error * error;
    }
    double largest = 0;
    for (const double l : lambda) {
      largest = std::max(largest, std::fabs(l * z + std::sqrt(1 - l * l) * random.normal()));
    }
    beyond += largest / std::sqrt(sum / kDf) >= 2.5 ? 1 : 0;
  }
  const double p = dunnett_upper(2.5, lambda, kDf);
  EXPECT_NEAR(beyond / static_cast<double>(kDraws), p, 5 * std::sqrt(p * (1 - p) / kDraws));
}

TEST(Dunnett, PAndIntervalAgree) {
  const auto both = dunnett({20, 25, 21, 16}, {6, 5, 4, 7}, 0, 9, 18);
  ASSERT_TRUE(both.summary.usable) << both.summary.message;
  ASSERT_EQ(both.comparisons.size(), 3U);
  EXPECT_EQ(both.comparisons[2].treatment, 3U);
  EXPECT_DOUBLE_EQ(both.comparisons[0].difference, 5);
  EXPECT_NEAR(both.comparisons[0].standard_error, std::sqrt(9 * (1 / 5. + 1 / 6.)), 1e-14);
  for (const auto& one : both.comparisons) {
    EXPECT_EQ(one.p < 0.05, one.interval.low > 0 || one.interval.high < 0);
  }
  const auto less = dunnett({20, 25, 21, 16}, {6, 5, 4, 7}, 0, 9, 18, {Against::less, 0.95});
  EXPECT_GT(less.comparisons[0].p, 0.99);
  EXPECT_LT(less.comparisons[2].p, both.comparisons[2].p);
  EXPECT_EQ(less.comparisons[2].interval.low, -kInfinity);
  const auto greater = dunnett({20, 25, 21, 16}, {6, 5, 4, 7}, 0, 9, 18, {Against::greater, 0.95});
  EXPECT_LT(greater.comparisons[0].p, both.comparisons[0].p);
  EXPECT_EQ(greater.comparisons[0].interval.high, kInfinity);
}

TEST(Dunnett, RefusesInOneSentence) {
  const auto code = [](const Values& means, const std::vector<int>& counts, std::size_t control,
                       double variance, double df, DunnettOptions options = {}) {
    const auto found = dunnett(means, counts, control, variance, df, options);
    EXPECT_FALSE(found.summary.usable);
    EXPECT_TRUE(found.comparisons.empty());
    return found.summary.problem.code;
  };
  EXPECT_EQ(code({1, 2}, {3, 3}, 0, 1, 4, {Against::differs, 1}), "option_out_of_range");
  EXPECT_EQ(code({1, 2}, {3, 3}, 0, 1, 4, {Against::less, 0.5}), "option_out_of_range");
  EXPECT_EQ(code({1}, {3}, 0, 1, 4), "too_few");
  EXPECT_EQ(code(Values(202, 1), std::vector<int>(202, 2), 0, 1, 4), "too_many");
  EXPECT_EQ(code({1, 2}, {3}, 0, 1, 4), "lengths_differ");
  EXPECT_EQ(code({1, kInfinity}, {3, 3}, 0, 1, 4), "not_finite");
  EXPECT_EQ(code({1, 2}, {3, 0}, 0, 1, 4), "count_out_of_range");
  EXPECT_EQ(code({1, 2}, {3, 3}, 0, 0, 4), "variance_out_of_range");
  EXPECT_EQ(code({1, 2}, {3, 3}, 0, 1, 0.5), "df_out_of_range");
  EXPECT_EQ(code({1, 2}, {3, 3}, 2, 1, 4), "no_such_control");
}

} // namespace
