// Three published trials, from their plan files to their known answers.
//
// Oats: Yates F (1935) Complex experiments, J. R. Stat. Soc. Suppl. 2:181-247, split
// plot. Ryegrass: Denis JB, Gower JC (1994), blocks. Lettuce: Pederson, repeated
// measures. Data from the R package agridat (MIT). Answers: R 4.2.2, aov with Error(),
// emmeans (pairs, Tukey), TukeyHSD, anova.mlm with test "Spherical", rstudent.
#include "baize/sheets/trial_csv.h"
#include "baize/trials/analysis.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace baize::trials {
namespace {

services::ReceivedFile file(const std::string& name) {
  std::ifstream in(std::string(BAIZE_SOURCE_DIR) + "/tests/reference/data/trials/" + name);
  std::ostringstream content;
  content << in.rdbuf();
  return {name, content.str()};
}

struct Read {
  Plan plan;
  Values values;
};

Read trial(const std::string& name) {
  const sheets::TrialCsv files;
  const auto reading = files.read(file(name + "_plan.csv"), file(name + "_records.csv"));
  EXPECT_TRUE(reading.good()) << units::sentence(reading.problems.front());
  const auto values = gather(reading.plan, reading.records);
  EXPECT_TRUE(values) << units::sentence(values.error());
  return {reading.plan, *values};
}

const Pair& pair(const Comparison& comparison, const std::string& first,
                 const std::string& second) {
  for (const Pair& one : comparison.pairs) {
    if (one.first == first && one.second == second) {
      return one;
    }
  }
  ADD_FAILURE() << first << " and " << second;
  return comparison.pairs.front();
}

void near(double value, double known, double relative = 1e-7) {
  EXPECT_NEAR(value, known, std::fabs(known) * relative);
}

TEST(PublishedTrials, OatsInWholePlotsAndPlots) {
  const Read oats = trial("oats");
  const Analysis analysis = analyse(oats.plan, oats.values);
  ASSERT_TRUE(analysis.summary.usable) << analysis.summary.message;
  ASSERT_EQ(analysis.overall.comparisons.size(), 3U);
  const Comparison& varieties = analysis.overall.comparisons[0];
  near(varieties.f, 1.48534, 1e-5);
  near(varieties.p, 0.27239, 1e-4);
  EXPECT_EQ(varieties.df, 2);
  EXPECT_EQ(varieties.error_df, 10);
  const Comparison& nitrogen = analysis.overall.comparisons[1];
  near(nitrogen.f, 37.68565);
  EXPECT_EQ(nitrogen.df, 3);
  EXPECT_EQ(nitrogen.error_df, 45);
  near(analysis.overall.comparisons[2].f, 0.30282, 1e-4);
  const Pair& far = pair(varieties, "Marvellous", "Victory");
  near(far.difference, 12.166666667);
  near(far.standard_error, 7.078903844);
  near(far.p_among_all, 0.2458301450, 1e-6);
  near(far.among_all.low, -7.238697955, 1e-6);
  near(far.among_all.high, 31.57203129, 1e-6);
  // The same nitrogen, different varieties: both errors mix.
  const Pair& mixed = pair(analysis.overall.comparisons[2], "GoldenRain / 0", "Marvellous / 0");
  near(mixed.standard_error, 9.715025114);
  near(mixed.df, 30.23078024);
  EXPECT_EQ(nitrogen.means[0].letters, "c"); // 79.4 against 98.9 b, 114.2 a, 123.4 a
  EXPECT_EQ(nitrogen.means[1].letters, "b");
  EXPECT_EQ(nitrogen.means[2].letters, "a");
  EXPECT_EQ(nitrogen.means[3].letters, "a");
  for (const Mean& mean : varieties.means) {
    EXPECT_EQ(mean.letters, "a");
  }
  ASSERT_TRUE(analysis.checks.normality);
  near(*analysis.checks.normality, 0.2086237, 1e-6);
  EXPECT_EQ(analysis.checks.outlier_p, 1); // R: the largest studentized residual is 2.37
}

TEST(PublishedTrials, RyegrassInBlocks) {
  const Read ryegrass = trial("ryegrass");
  const Analysis analysis = analyse(ryegrass.plan, ryegrass.values);
  ASSERT_TRUE(analysis.summary.usable) << analysis.summary.message;
  const Comparison& gen = analysis.overall.comparisons.at(0);
  near(gen.f, 1.85339, 1e-5);
  near(gen.p, 0.02213, 1e-3);
  EXPECT_EQ(gen.error_df, 120);
  near(gen.lsd, 65.7451906481, 1e-9);
  near(*analysis.overall.cv, 0.152247535375, 1e-9);
  const Pair& one = pair(gen, "G01", "G04");
  near(one.difference, 52.4857142857, 1e-9);
  near(one.p_among_all, 0.991452066194, 1e-7);
  near(one.among_all.low, -68.7598145392, 1e-7);
  for (const Mean& mean : gen.means) {
    EXPECT_EQ(mean.letters, "a"); // TukeyHSD: no pair below 0.05
  }
  near(*analysis.checks.spread_p, 0.968715033098, 1e-8);
  near(*analysis.checks.normality, 0.296756257868, 1e-8);
  EXPECT_EQ(analysis.checks.outlier, 701);
  near(analysis.checks.outlier_p, 0.484104346364, 1e-8);
}

TEST(PublishedTrials, LettuceThroughTime) {
  const Read lettuce = trial("lettuce");
  const Analysis analysis = analyse(lettuce.plan, lettuce.values);
  ASSERT_TRUE(analysis.summary.usable) << analysis.summary.message;
  EXPECT_EQ(analysis.days.size(), 11U);
  near(analysis.overall.comparisons.at(0).f, 0.62149, 1e-5); // of the areas by trapezoids
  near(analysis.overall.comparisons.at(0).means[0].mean, 63.4101851852, 1e-10);
  near(pair(analysis.overall.comparisons.at(0), "T1", "T2").p_among_all, 0.578963927326, 1e-8);
  const Repeated& repeated = analysis.repeated;
  ASSERT_TRUE(repeated.summary.usable);
  EXPECT_FALSE(repeated.lower_bound);
  EXPECT_NEAR(repeated.epsilon, 0.1418, 0.00005);
  ASSERT_EQ(repeated.tests.size(), 3U);
  near(repeated.tests[0].f, 0.59213, 1e-5);
  near(repeated.tests[1].f, 1346.17678);
  near(repeated.tests[2].f, 4.68284, 1e-5);
  near(repeated.tests[2].p, 2.042373623e-10, 1e-6);
  near(repeated.tests[2].p_corrected, 0.005567025473, 1e-6);
  EXPECT_EQ(repeated.tests[2].of, "treatment and day");
}

} // namespace
} // namespace baize::trials
