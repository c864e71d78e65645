#include "baize/compare/comparison.h"
#include "baize/stats/random.h"
#include "unit/special.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace {

using namespace baize;
using namespace baize::compare;
using special::kInfinity;

Look look(const std::string& method, int day, const std::string& green, double left, double right) {
  Look out;
  out.method = method;
  out.club = "larch";
  out.green = green;
  out.day = *units::parse_iso_day("2024-03-01") + day;
  out.days = {left, right};
  return out;
}

Look exact(const std::string& method, int day, const std::string& green, double log_days) {
  return look(method, day, green, std::exp(log_days), std::exp(log_days));
}

/// Log days of works: A 1 and 2, B 3 and 4; two greens each, 0.1 to both sides.
std::vector<Look> four_works() {
  std::vector<Look> looks;
  const double centre[] = {1, 2, 3, 4};
  for (int w = 0; w < 4; ++w) {
    // A on days 0 and 60, B on days 30 and 90.
    const int day = w < 2 ? 60 * w : 60 * (w - 2) + 30;
    for (const double off : {-0.1, 0.1}) {
      Look one = exact(w < 2 ? "A" : "B", day, off < 0 ? "1" : "2", centre[w] + off);
      one.depth = centre[w] + off;
      looks.push_back(one);
    }
  }
  return looks;
}

// Pencil: the t interval on works' means: their variance 0.5 (two within each method:
// 0.5^2 * 4 / 2), difference 2, error sqrt(0.5), t(0.975; 2) = 4.302653.
TEST(Compare, EqualCountsGiveTheTIntervalOnTheWorksMeans) {
  CompareOptions options;
  options.distribution = stats::AftDistribution::log_normal;
  const Comparison found = compare::compare(four_works(), options);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_EQ(found.works, 4);
  EXPECT_EQ(found.looks, 8);
  EXPECT_EQ(found.df, 2);
  ASSERT_EQ(found.pairs.size(), 1U);
  const PairFigures& pair = found.pairs[0];
  const double far = 4.302653 * std::sqrt(0.5);
  EXPECT_NEAR(std::log(pair.ratio->value), 2, 1e-6);
  EXPECT_NEAR(std::log(*pair.ratio->low), 2 - far, 1e-5);
  EXPECT_NEAR(std::log(*pair.ratio->high), 2 + far, 1e-5);
  EXPECT_NEAR(found.methods[0].days->value, std::exp(1.5), 1e-5);
  EXPECT_NEAR(std::log(*found.methods[0].days->high), 1.5 + 4.302653 * 0.5, 1e-5);
  EXPECT_NEAR(pair.days->value, std::exp(3.5) - std::exp(1.5), 1e-4);
  EXPECT_FALSE(pair.told_apart);
  EXPECT_LT(*pair.days->low, 0);
  EXPECT_NEAR(pair.p, 0.1056, 5e-4); // t = 2.828 on 2 degrees
  EXPECT_EQ(pair.evidence, Evidence::repeated);
  // The same arithmetic for depth.
  EXPECT_NEAR(pair.depth->value, 2, 1e-12);
  EXPECT_NEAR(*pair.depth->low, 2 - far, 1e-5);
  EXPECT_NEAR(*found.methods[0].depth->high, 1.5 + 4.302653 * 0.5, 1e-5);
  EXPECT_EQ(found.tried.size(), 3U);
}

// Pencil: variance 0.5 of a work; 10 days at a median of exp(2.5) = 12.18: d = 2
// asinh(10 / 24.36) = 0.7996; 2 * 0.5 * (1.95996 + 0.84162)^2 / 0.7996^2 + 0.9604 = 13.24.
TEST(Compare, WorksNeededByPencil) {
  CompareOptions options;
  options.distribution = stats::AftDistribution::log_normal;
  options.days_wanted = 10;
  const Comparison found = compare::compare(four_works(), options);
  EXPECT_EQ(found.pairs[0].works_needed, 14);
}

// Pencil: both looks of B's works, log 3 and 4 +- 0.1, would have been 0.5 earlier: their
// median falls from exp(3.5) to exp(3), A's stays, and so does every difference.
TEST(Compare, MissedVisitsGiveASecondMedianAndLeaveTheRestAlone) {
  CompareOptions options;
  options.distribution = stats::AftDistribution::log_normal;
  std::vector<Look> looks = four_works();
  const Comparison plain = compare::compare(looks, options);
  EXPECT_FALSE(plain.methods[0].days_if_good);
  for (Look& one : looks) {
    if (one.method == "B") {
      const double earlier = one.days.left * std::exp(-0.5);
      one.days_if_good = stats::CensoredTime{earlier, earlier};
    }
  }
  const Comparison found = compare::compare(looks, options);
  EXPECT_EQ(found.methods[0].missed, 0);
  EXPECT_EQ(found.methods[1].missed, 4);
  ASSERT_TRUE(found.methods[0].days_if_good && found.methods[1].days_if_good);
  EXPECT_NEAR(found.methods[0].days_if_good->value, std::exp(1.5), 1e-5);
  EXPECT_NEAR(found.methods[1].days_if_good->value, std::exp(3.0), 1e-4);
  EXPECT_EQ(found.methods[1].days->value, plain.methods[1].days->value);
  EXPECT_EQ(found.pairs[0].days->value, plain.pairs[0].days->value);
  EXPECT_EQ(found.pairs[0].p, plain.pairs[0].p);
}

TEST(Compare, NineteenGreensOfOneDayAreOneWork) {
  std::vector<Look> looks;
  for (int g = 0; g < 19; ++g) {
    const std::string green = std::to_string(g);
    looks.push_back(exact("A", 0, green, 2 + 0.01 * g));
    looks.push_back(exact("B", 50, green, 3 + 0.01 * g));
  }
  const Comparison found = compare::compare(looks);
  EXPECT_EQ(found.works, 2);
  EXPECT_EQ(found.summary.problem.code, "too_few_works");
  ASSERT_EQ(found.methods.size(), 2U);
  EXPECT_EQ(found.methods[0].works, 1);
  EXPECT_EQ(found.methods[0].looks, 19);
  EXPECT_TRUE(found.methods[0].curve.summary.usable);
  EXPECT_EQ(found.pairs[0].evidence, Evidence::one_work);
}

TEST(Compare, MethodsWithoutAMedianAreLeftOutAndTold) {
  std::vector<Look> looks = four_works();
  looks.push_back(look("C", 200, "1", 20, kInfinity));
  looks.push_back(look("D", 300, "1", 0, 4));
  const Comparison found = compare::compare(looks);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  ASSERT_EQ(found.methods.size(), 4U);
  EXPECT_EQ(found.methods[2].no_median, NoMedian::never_back);
  EXPECT_EQ(found.methods[3].no_median, NoMedian::never_below);
  EXPECT_FALSE(found.methods[3].days);
  EXPECT_EQ(found.pairs.size(), 6U);
  EXPECT_FALSE(found.pairs.back().days);
}

TEST(Compare, RefusesInOneSentence) {
  EXPECT_EQ(compare::compare({}).summary.problem.code, "one_method");
  EXPECT_EQ(compare::compare({exact("A", 0, "1", 2)}).summary.problem.code, "one_method");
  EXPECT_EQ(compare::compare({look("A", 0, "1", 9, kInfinity), look("B", 9, "1", 9, kInfinity)})
                .summary.problem.code,
            "too_few_medians");
  CompareOptions options;
  options.level = 1;
  EXPECT_EQ(compare::compare(four_works(), options).summary.problem.code, "option_out_of_range");
  options.level = 0.9;
  options.days_wanted = 0;
  EXPECT_EQ(compare::compare(four_works(), options).summary.problem.code, "option_out_of_range");
}

TEST(Compare, EvidenceByDesign) {
  const auto evidence = [](const std::vector<std::pair<std::string, int>>& works, bool lot) {
    std::vector<Look> looks;
    for (const auto& [method, day] : works) {
      for (const double off : {0.0, 0.2}) {
        looks.push_back(exact(method, day, off > 0 ? "1" : "2", 2 + 0.002 * day + off));
        looks.back().randomised = lot;
      }
    }
    const Comparison found = compare::compare(looks);
    EXPECT_EQ(found.pairs.size(), 1U);
    return std::pair(found.pairs[0].evidence, found.pairs[0].shared_days);
  };
  EXPECT_EQ(evidence({{"A", 0}, {"B", 9}, {"B", 30}}, false).first, Evidence::one_work);
  EXPECT_EQ(evidence({{"A", 0}, {"A", 9}, {"B", 30}, {"B", 60}}, true).first,
            Evidence::before_after);
  EXPECT_EQ(evidence({{"A", 0}, {"A", 90}, {"B", 0}, {"B", 60}}, false),
            std::pair(Evidence::repeated, 1));
  EXPECT_EQ(evidence({{"A", 0}, {"A", 90}, {"B", 0}, {"B", 90}}, true),
            std::pair(Evidence::randomised, 2));
}

/// A club whose truth is known: log days 2.6, slope 1 in log growth, works' spread 0.15,
/// greens' 0.2, the second method `effect` longer; looked at every third day.
std::vector<Look> club(std::uint64_t seed, int works_each, double effect) {
  stats::Random random(seed);
  std::vector<Look> looks;
  for (int w = 0; w < 2 * works_each; ++w) {
    const bool second = w % 2 == 1;
    const double growth = 0.35 + 0.6 * random.uniform();
    const double centre = 2.6 + (second ? effect : 0) - std::log(growth) + 0.15 * random.normal();
    for (int g = 0; g < 9; ++g) {
      const double days = std::exp(centre + 0.2 * random.normal());
      const double left = 3 * std::floor(days / 3);
      looks.push_back(look(second ? "B" : "A", 40 * w, std::to_string(g), left,
                           random.uniform() < 0.08 && left > 0 ? kInfinity : left + 3));
      looks.back().growth = growth;
      looks.back().growth_days =
          stats::CensoredTime{left * growth, looks.back().days.right * growth};
    }
  }
  return looks;
}

// Of 200 clubs with a 95 % interval, between 91 and 98.5 % hold the truth: 3.2 and 1.8
// binomial deviations of 190.
TEST(Compare, IntervalsHoldTheTruthAsOftenAsTheySay) {
  int holds = 0;
  int growth_holds = 0;
  int used = 0;
  for (int k = 0; k < 200; ++k) {
    const Comparison found = compare::compare(club(1000 + static_cast<std::uint64_t>(k), 5, 0.3));
    ASSERT_TRUE(found.summary.usable) << found.summary.message;
    const bool swapped = found.pairs[0].first == "B";
    const double truth = std::exp(swapped ? -0.3 : 0.3);
    holds += *found.pairs[0].ratio->low <= truth && truth <= *found.pairs[0].ratio->high ? 1 : 0;
    const Figure& growth = *found.pairs[0].growth_days;
    const double middle = std::exp(2.6) * (std::exp(0.3) - 1) * (swapped ? -1 : 1);
    growth_holds += *growth.low <= middle && middle <= *growth.high ? 1 : 0;
    used += found.adjustments[0].used ? 1 : 0;
  }
  RecordProperty("holds", holds);
  EXPECT_GE(holds, 182);
  EXPECT_LE(holds, 197);
  EXPECT_GE(growth_holds, 180);
  EXPECT_EQ(used, 200);
}

TEST(Compare, WeatherMissingForMostIsTold) {
  std::vector<Look> looks = club(5, 4, 0.3);
  for (std::size_t i = 0; i < looks.size(); ++i) {
    if (i % 3 != 0) {
      looks[i].growth_days.reset();
      looks[i].growth.reset();
    }
  }
  const Comparison found = compare::compare(looks);
  ASSERT_TRUE(found.summary.usable);
  EXPECT_FALSE(found.no_growth_days.empty());
  EXPECT_FALSE(found.methods[0].growth_days);
  EXPECT_FALSE(found.adjustments[0].used);
  EXPECT_EQ(found.adjustments[0].reason, "known at 24 of 72 greens only");
}

RC_GTEST_PROP(CompareLaws, TheOrderOfTheLooksChangesNoByte, ()) {
  std::vector<Look> looks = club(*rc::gen::inRange<std::uint64_t>(0, 50), 3, 0.2);
  const Comparison before = compare::compare(looks);
  stats::Random random(*rc::gen::arbitrary<std::uint64_t>());
  stats::shuffle(looks, random);
  const Comparison after = compare::compare(looks);
  RC_ASSERT(before.summary.usable && after.summary.usable);
  RC_ASSERT(before.pairs[0].first == after.pairs[0].first);
  RC_ASSERT(before.pairs[0].days->value == after.pairs[0].days->value);
  RC_ASSERT(*before.pairs[0].days->low == *after.pairs[0].days->low);
}

} // namespace
