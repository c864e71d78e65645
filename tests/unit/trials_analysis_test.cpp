#include "baize/trials/analysis.h"
#include "unit/trials_given.h"

#include <gtest/gtest.h>

#include <cmath>

namespace baize::trials {
namespace {

units::Day day(int n) {
  return *units::make_day(2025, 3, 1) + n;
}

/// Two treatments in three blocks: plots 101 102, 201 202, 301 302, "a" first.
Plan pairs_of(int blocks = 3) {
  Plan plan;
  plan.trial = "pairs";
  plan.control = "a";
  for (int block = 1; block <= blocks; ++block) {
    for (int column = 1; column <= 2; ++column) {
      Plot plot;
      plot.number = 100 * block + column;
      plot.block = block;
      plot.treatment = column == 1 ? "a" : "b";
      plan.plots.push_back(plot);
    }
  }
  return plan;
}

std::vector<Record> records_of(const Plan& plan, int on, const std::vector<double>& scores) {
  std::vector<Record> records;
  for (std::size_t i = 0; i < scores.size(); ++i) {
    records.push_back({"pairs", plan.plots[i].number, day(on), "score", scores[i], "here"});
  }
  return records;
}

// By pencil: differences 1, 1, 3 have mean 5/3 and standard error 2/3: t 2.5 on 2
// degrees of freedom, p = 1 - 2.5 / sqrt(2 + 2.5^2) = 0.12961.
TEST(TrialAnalysis, TwoTreatmentsInBlocksAreAPairedT) {
  const Plan plan = pairs_of();
  const auto values = gather(plan, records_of(plan, 0, {7, 8, 8, 9, 6, 9}));
  ASSERT_TRUE(values);
  const Analysis analysis = analyse(plan, *values);
  ASSERT_TRUE(analysis.summary.usable) << analysis.summary.message;
  const Comparison& comparison = analysis.overall.comparisons.at(0);
  const Pair& pair = comparison.pairs.at(0);
  EXPECT_NEAR(pair.difference, -5.0 / 3, 1e-12);
  EXPECT_NEAR(pair.standard_error, 2.0 / 3, 1e-12);
  EXPECT_NEAR(pair.p_alone, 1 - 2.5 / std::sqrt(8.25), 1e-10);
  EXPECT_NEAR(pair.p_among_all, pair.p_alone, 1e-9); // Tukey of two means is the t test
  EXPECT_NEAR(comparison.f, 6.25, 1e-12);
  EXPECT_EQ(comparison.means[0].letters, "a");
  EXPECT_EQ(comparison.means[1].letters, "a");
}

TEST(TrialAnalysis, SeveralRecordsOfAPlotAreAveraged) {
  const Plan plan = pairs_of();
  auto records = records_of(plan, 0, {7, 8, 8, 9, 6, 9});
  records.push_back({"", 101, day(0), "score", 9, "there"});
  const auto values = gather(plan, records);
  ASSERT_TRUE(values);
  EXPECT_EQ(*values->by_day[0][0], 8);
  EXPECT_EQ(values->records, 7);
}

TEST(TrialAnalysis, TheAreaBridgesAMissingVisitAndSaysSo) {
  const Plan plan = pairs_of();
  auto records = records_of(plan, 0, {7, 8, 8, 9, 6, 9});
  const auto middle = records_of(plan, 2, {7, 8, 8, 9, 6, 9});
  records.insert(records.end(), middle.begin() + 1, middle.end()); // 101 was not scored
  const auto last = records_of(plan, 6, {9, 8, 8, 9, 6, 9});
  records.insert(records.end(), last.begin(), last.end() - 1); // 302 was not scored
  const Analysis analysis = analyse(plan, *gather(plan, records));
  ASSERT_TRUE(analysis.summary.usable) << analysis.summary.message;
  EXPECT_EQ(analysis.interpolated, 1);
  EXPECT_EQ(analysis.area_lost, 1);
  EXPECT_EQ(analysis.overall.lost, 1);
  EXPECT_NEAR(analysis.overall.values[0], 8, 1e-12); // from 7 to 9 in a straight line
  ASSERT_EQ(analysis.days.size(), 3U);
  EXPECT_EQ(analysis.days[1].analysis.lost, 1);
  EXPECT_TRUE(analysis.repeated.lower_bound);
  EXPECT_NEAR(analysis.repeated.epsilon, 0.5, 1e-12);
  EXPECT_EQ(analysis.repeated.lost, 2);
}

TEST(TrialAnalysis, RecordsThatDoNotFitAreRefused) {
  const Plan plan = pairs_of();
  const auto code = [&](auto change) {
    auto records = records_of(plan, 0, {7, 8, 8, 9, 6, 9});
    change(records);
    const auto values = gather(plan, records);
    return values ? "" : values.error().code;
  };
  EXPECT_EQ(code([](auto& r) { r.clear(); }), "no_records");
  EXPECT_EQ(code([](auto& r) { r[2].trial = "other"; }), "other_trial");
  EXPECT_EQ(code([](auto& r) { r[2].plot = 105; }), "unknown_plot");
  EXPECT_EQ(code([](auto& r) { r[2].quantity = "firmness"; }), "two_quantities");
  EXPECT_EQ(code([](auto& r) { r[2].value = 10.5; }), "score_out_of_range");
  EXPECT_EQ(code([](auto& r) { r[2].value = std::nan(""); }), "not_finite");
  auto records = records_of(plan, 0, {7, 8, 8, 9, 6, 9});
  records[1].plot = 999;
  EXPECT_EQ(units::sentence(gather(plan, records).error()),
            "here: plot is '999', but must be a plot of the plan.");
}

TEST(TrialAnalysis, AllScoresEqualIsSaidAndNotUsed) {
  const Plan plan = pairs_of();
  const Analysis analysis = analyse(plan, *gather(plan, records_of(plan, 0, {8, 8, 8, 8, 8, 8})));
  EXPECT_FALSE(analysis.summary.usable);
  EXPECT_EQ(analysis.summary.termination, stats::Termination::degenerate);
  EXPECT_EQ(analysis.summary.problem.code, "no_spread");
}

TEST(TrialAnalysis, NoVisitAfterTheTreatmentIsRefused) {
  const Plan plan = pairs_of();
  AnalysisOptions options;
  options.treated = day(5);
  const Analysis analysis =
      analyse(plan, *gather(plan, records_of(plan, 0, {7, 8, 8, 9, 6, 9})), options);
  EXPECT_EQ(analysis.summary.problem.code, "too_few");
}

/// Four blocks; a plot is back on the first visit with 8 or more.
Values courses(const Plan& plan, const std::vector<int>& back_on) {
  std::vector<Record> records;
  for (int on = 2; on <= 26; on += 2) {
    for (std::size_t i = 0; i < plan.plots.size(); ++i) {
      records.push_back(
          {"", plan.plots[i].number, day(on), "score", on >= back_on[i] ? 8.0 : 6.0, ""});
    }
  }
  return *gather(plan, records);
}

TEST(TrialTimeBack, IntervalsLieBetweenVisits) {
  const Plan plan = pairs_of(4);
  const Values values = courses(plan, {12, 6, 14, 7, 10, 8, 99, 2});
  const TimeBack back = time_back(plan, values, {day(0), 8, 0.95});
  ASSERT_EQ(back.plots.size(), 8U);
  EXPECT_EQ(back.plots[0].days, (stats::CensoredTime{10, 12}));
  EXPECT_EQ(back.plots[3].days, (stats::CensoredTime{6, 8})); // day 7 was not visited
  EXPECT_EQ(back.plots[6].days.left, 26);
  EXPECT_TRUE(back.plots[6].days.right_censored());
  EXPECT_EQ(back.plots[7].days, (stats::CensoredTime{0, 2}));
  EXPECT_TRUE(back.plots[7].never_below);
  ASSERT_TRUE(back.summary.usable) << back.summary.message;
  EXPECT_EQ(back.treatments[0].not_back, 1);
  ASSERT_EQ(back.differences.size(), 1U);
  const BackDifference& difference = back.differences[0];
  EXPECT_GT(difference.days, 0); // "a" was later
  EXPECT_NEAR(difference.days, back.treatments[0].median - back.treatments[1].median, 1e-12);
  EXPECT_LT(difference.interval.low, difference.days);
  EXPECT_EQ(back.df, 3); // 8 plots less 2 treatments less 4 blocks plus 1
}

TEST(TrialTimeBack, TreatmentsWithoutATimeAreNamedAndLeftOut) {
  const Plan plan = pairs_of(4);
  const TimeBack back =
      time_back(plan, courses(plan, {2, 6, 2, 7, 2, 10, 2, 12}), {day(0), 8, 0.95});
  ASSERT_TRUE(back.summary.usable) << back.summary.message;
  EXPECT_EQ(back.never_below, std::vector<std::string>({"a"}));
  ASSERT_EQ(back.treatments.size(), 1U);
  EXPECT_EQ(back.treatments[0].treatment, "b");
  EXPECT_TRUE(back.differences.empty());
  const TimeBack late =
      time_back(plan, courses(plan, {99, 6, 99, 7, 99, 10, 99, 12}), {day(0), 8, 0.95});
  EXPECT_EQ(late.never_back, std::vector<std::string>({"a"}));
}

TEST(TrialTimeBack, SaysWhenNothingCanBeTold) {
  const Plan plan = pairs_of(4);
  const TimeBack never = time_back(plan, courses(plan, std::vector<int>(8, 99)), {day(0), 8, 0.95});
  EXPECT_FALSE(never.summary.usable);
  EXPECT_EQ(never.summary.problem.code, "all_censored");
  const TimeBack late = time_back(plan, courses(plan, std::vector<int>(8, 9)), {day(90), 8, 0.95});
  EXPECT_EQ(late.summary.problem.code, "too_few");
}

} // namespace
} // namespace baize::trials
