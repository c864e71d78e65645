#include "baize/stats/bootstrap.h"
#include "baize/stats/random.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace {

using namespace baize::stats;
using Values = std::vector<double>;
using Drawn = std::vector<std::size_t>;

Resampled mean_of(const Values& values) {
  return [&values](const Drawn& drawn) {
    double sum = 0;
    for (const std::size_t unit : drawn) {
      sum += values[unit];
    }
    return sum / static_cast<double>(drawn.size());
  };
}

// Pencil: the mean's standard error by drawing anew is sqrt(sum of squares / n^2):
// values 1 2 4 5 8, mean 4, squares 30, error sqrt(30) / 5. Acceleration from off
// values -3 -2 0 1 4 (leaving one out moves the mean by a quarter of it).
TEST(Bootstrap, TheMeanByPencil) {
  const Values values{1, 2, 4, 5, 8};
  const auto found = bootstrap(5, mean_of(values), {20000, 1, 0.9});
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  const double error = std::sqrt(30.0) / 5;
  EXPECT_DOUBLE_EQ(found.estimate, 4);
  EXPECT_NEAR(found.standard_error, error, 4 * error / std::sqrt(40000.0));
  EXPECT_NEAR(found.bias, 0, 4 * error / std::sqrt(20000.0));
  const double cubes = -27 - 8 + 0 + 1 + 64;
  EXPECT_NEAR(found.acceleration, cubes / (6 * std::pow(30, 1.5)), 1e-14);
  EXPECT_EQ(found.repeats.size(), 20000U);
  EXPECT_TRUE(std::is_sorted(found.repeats.begin(), found.repeats.end()));
  // Skewed to the right: the interval moves up.
  ASSERT_TRUE(found.bca);
  EXPECT_GT(found.bca->low + found.bca->high, found.percentile.low + found.percentile.high);
}

TEST(Bootstrap, OnlyTheSeedMovesIt) {
  const Values values{1, 2, 4, 5, 8};
  const auto one = bootstrap(5, mean_of(values));
  const auto same = bootstrap(5, mean_of(values));
  EXPECT_EQ(one.repeats, same.repeats);
  EXPECT_EQ(one.percentile, same.percentile);
  EXPECT_NE(one.repeats, bootstrap(5, mean_of(values), {2000, 2, 0.95}).repeats);
}

// Shares of samples from a normal whose interval holds the truth, against the nominal:
// 300 samples, within four standard errors of 0.9 less what small samples lose.
TEST(Bootstrap, CoversAsItSays) {
  int held = 0;
  for (std::uint64_t sample = 0; sample < 300; ++sample) {
    Values values;
    baize::stats::Random random(99, sample);
    for (int i = 0; i < 30; ++i) {
      values.push_back(random.normal());
    }
    const auto found = bootstrap(30, mean_of(values), {400, sample, 0.9});
    held += found.bca && found.bca->low < 0 && found.bca->high > 0 ? 1 : 0;
  }
  EXPECT_NEAR(held / 300.0, 0.88, 4 * std::sqrt(0.9 * 0.1 / 300));
}

TEST(Bootstrap, RefusesInOneSentence) {
  const Values values{1, 2, 4, 5, 8};
  const auto mean = mean_of(values);
  const Resampled never = [](const Drawn&) { return std::nan(""); };
  EXPECT_EQ(bootstrap(5, mean, {99}).summary.problem.code, "option_out_of_range");
  EXPECT_EQ(bootstrap(5, mean, {200, 1, 0}).summary.problem.code, "option_out_of_range");
  EXPECT_EQ(bootstrap(1, mean).summary.problem.code, "too_few");
  EXPECT_EQ(bootstrap(5, never).summary.problem.code, "not_finite");
  EXPECT_EQ(bootstrap(5, [](const Drawn&) { return 7.0; }).summary.problem.code, "all_equal");
  // Only where every unit is in it: 5! / 5^5 of the repeats.
  const Resampled all = [](const Drawn& drawn) {
    Drawn sorted = drawn;
    std::sort(sorted.begin(), sorted.end());
    return sorted == Drawn{0, 1, 2, 3, 4} ? 1.0 : std::nan("");
  };
  EXPECT_EQ(bootstrap(5, all).summary.problem.code, "too_few");
  const auto halted = bootstrap(5, mean, {2000, 1, 0.95}, [](double done) { return done < 0.5; });
  EXPECT_EQ(halted.summary.termination, Termination::stopped);
  EXPECT_FALSE(halted.summary.usable);
}

RC_GTEST_PROP(BootstrapLaws, UnitsAreFree, ()) {
  const auto values = *rc::gen::container<Values>(
      8, rc::gen::map(rc::gen::inRange(-40, 40), [](int x) { return x / 4.0; }));
  RC_PRE(values.front() != values.back());
  Values moved;
  for (const double value : values) {
    moved.push_back(4 * value + 32);
  }
  const auto before = bootstrap(8, mean_of(values), {200, 1, 0.9});
  const auto after = bootstrap(8, mean_of(moved), {200, 1, 0.9});
  RC_ASSERT(before.summary.usable && after.summary.usable);
  RC_ASSERT(std::fabs(after.percentile.low - 4 * before.percentile.low - 32) < 1e-10);
  RC_ASSERT(before.bca.has_value() == after.bca.has_value());
  if (before.bca) {
    RC_ASSERT(std::fabs(after.bca->high - 4 * before.bca->high - 32) < 1e-8);
  }
}

} // namespace
