#include "baize/stats/aft_clusters.h"
#include "baize/stats/aft_frailty.h"
#include "baize/stats/aft_tests.h"
#include "baize/stats/random.h"
#include "unit/special.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <string>
#include <utility>

namespace {

using namespace baize::stats;
using Observations = std::vector<AftObservation>;

using special::kInfinity;

AftObservation log_time(double y, std::vector<double> covariates = {}) {
  return {{std::exp(y), std::exp(y)}, std::move(covariates)};
}

/// Greens of `clusters` works seen every third day; the second half of the works is
/// of another method.
struct Drawn {
  Observations observations;
  std::vector<int> clusters;
};
Drawn drawn(std::uint64_t seed, int clusters, int greens, double spread, double effect) {
  Random random(seed);
  Drawn out;
  for (int c = 0; c < clusters; ++c) {
    const double method = 2 * c >= clusters ? 1 : 0;
    const double common = 2.5 + effect * method + spread * random.normal();
    for (int g = 0; g < greens; ++g) {
      const double days = std::exp(common + 0.25 * random.normal());
      const double left = 3 * std::floor(days / 3);
      const bool open = random.uniform() < 0.1;
      out.observations.push_back({{left, open && left > 0 ? kInfinity : left + 3}, {method}});
      out.clusters.push_back(100 - c);
    }
  }
  return out;
}

// Pencil: log-normal, exact, as many in each cluster: the analysis of variance by
// maximum likelihood. Logarithms 1 2 | 3 4 | 8 9: within sum of squares 1.5, so scale^2
// = 1.5 / 3; between sum of squares 2 (9 + 1 + 16) - with cluster means 1.5, 3.5, 8.5
// about 4.5 - over 3 clusters = scale^2 + 2 spread^2.
TEST(AftFrailty, LogNormalByPencil) {
  const Observations observations{log_time(1), log_time(2), log_time(3),
                                  log_time(4), log_time(8), log_time(9)};
  const auto found =
      fit_aft_frailty(observations, {5, 5, 2, 2, 9, 9}, {{AftDistribution::log_normal}});
  ASSERT_TRUE(found.fit.summary.usable) << found.fit.summary.message;
  const double within = 1.5 / 3;
  const double between = 2.0 * (9 + 1 + 16) / 3;
  EXPECT_NEAR(found.fit.scale * found.fit.scale, within, 1e-7);
  EXPECT_NEAR(found.cluster_sd * found.cluster_sd, (between - within) / 2, 1e-6);
  EXPECT_NEAR(found.fit.coefficients[0].value, 4.5, 1e-7);
  EXPECT_NEAR(found.fit.coefficients[0].standard_error, std::sqrt(between / 6), 1e-6);
  const double log_likelihood = -0.5 * (6 * std::log(2 * std::numbers::pi) + 3 * std::log(within) +
                                        3 * std::log(between) + 6) -
                                27;
  EXPECT_NEAR(found.fit.log_likelihood, log_likelihood, 1e-9);
  // The second cluster's mean, drawn towards the middle.
  ASSERT_EQ(found.effects.size(), 3U);
  EXPECT_EQ(found.effects[0].cluster, 2);
  EXPECT_NEAR(found.effects[0].value, (3.5 - 4.5) * (between - within) / between, 1e-6);
  EXPECT_EQ(found.clusters, 3);
}

TEST(AftFrailty, ClustersThatDoNotDifferEndAtTheBoundary) {
  const Observations observations{log_time(1), log_time(5), log_time(1.5),
                                  log_time(4), log_time(2), log_time(4.5)};
  const AftOptions options{AftDistribution::log_normal};
  const auto found = fit_aft_frailty(observations, {1, 1, 2, 2, 3, 3}, {options});
  EXPECT_EQ(found.fit.summary.termination, Termination::boundary);
  ASSERT_TRUE(found.fit.summary.usable);
  const auto plain = fit_aft(observations, options);
  EXPECT_EQ(found.cluster_sd, 0);
  EXPECT_EQ(found.fit.log_likelihood, plain.log_likelihood);
  EXPECT_EQ(found.fit.coefficients[0].standard_error, plain.coefficients[0].standard_error);
  EXPECT_EQ(found.likelihood_ratio_p, 1);
}

TEST(AftFrailty, MoreNodesChangeNothing) {
  const Drawn data = drawn(4, 8, 6, 0.4, 0.3);
  for (const auto distribution : {AftDistribution::exponential, AftDistribution::weibull,
                                  AftDistribution::log_normal, AftDistribution::log_logistic}) {
    const auto some = fit_aft_frailty(data.observations, data.clusters, {{distribution}, 21});
    const auto many = fit_aft_frailty(data.observations, data.clusters, {{distribution}, 61});
    ASSERT_TRUE(some.fit.summary.usable) << some.fit.summary.message;
    EXPECT_NEAR(some.fit.log_likelihood, many.fit.log_likelihood, 1e-7);
    EXPECT_NEAR(some.fit.coefficients[1].value, many.fit.coefficients[1].value, 1e-5);
    EXPECT_GE(some.fit.log_likelihood, some.log_likelihood_plain);
  }
}

// Truth: spread 0.3 among 40 works, second method 0.5 longer. Three errors wide.
TEST(AftFrailty, FindsTheTruthItWasDrawnFrom) {
  const Drawn data = drawn(7, 40, 9, 0.3, 0.5);
  const auto found =
      fit_aft_frailty(data.observations, data.clusters, {{AftDistribution::log_normal}});
  ASSERT_TRUE(found.fit.summary.usable) << found.fit.summary.message;
  EXPECT_NEAR(found.fit.coefficients[1].value, 0.5, 3 * found.fit.coefficients[1].standard_error);
  EXPECT_NEAR(std::log(found.cluster_sd / 0.3), 0, 3 * found.log_cluster_sd_error);
  EXPECT_LT(found.likelihood_ratio_p, 1e-6);
  // Without the works' spread the error would come out far too small.
  const auto plain = fit_aft(data.observations, {AftDistribution::log_normal});
  EXPECT_GT(found.fit.coefficients[1].standard_error, 2 * plain.coefficients[1].standard_error);
}

TEST(AftFrailty, RefusesInOneSentence) {
  const Observations four{log_time(1), log_time(2), log_time(3), log_time(5)};
  const auto code = [&](const std::vector<int>& clusters, int nodes) {
    const auto found = fit_aft_frailty(four, clusters, {{}, nodes});
    EXPECT_FALSE(found.fit.summary.usable);
    return found.fit.summary.problem.code;
  };
  EXPECT_EQ(code({1, 1, 2, 2}, 2), "option_out_of_range");
  EXPECT_EQ(code({1, 1, 2}, 21), "lengths_differ");
  EXPECT_EQ(code({1, 1, 1, 1}, 21), "too_few_clusters");
  EXPECT_EQ(code({1, 2, 3, 4}, 21), "clusters_of_one");
  EXPECT_EQ(fit_aft_frailty({}, {}).fit.summary.problem.code, "too_few");
}

// Pencil: exponential exact times 1 2 | 3 10: rate 4 / 16; a time's score in log mean
// is t / 4 - 1, a cluster's sum (3/4 - 2) and (13/4 - 2); information 4.
TEST(AftClustered, ExponentialByPencil) {
  const Observations observations{{{1, 1}, {}}, {{2, 2}, {}}, {{3, 3}, {}}, {{10, 10}, {}}};
  const AftOptions options{AftDistribution::exponential};
  const auto found = fit_aft_clustered(observations, {1, 1, 2, 2}, options);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_NEAR(found.coefficients[0].value, std::log(4), 1e-12);
  EXPECT_NEAR(found.coefficients[0].standard_error, std::sqrt(2 * 1.25 * 1.25) / 4, 1e-12);
  EXPECT_EQ(fit_aft_clustered(observations, {1, 1, 1, 1}, options).summary.problem.code,
            "too_few_clusters");
  EXPECT_EQ(fit_aft_clustered(observations, {1}, options).summary.problem.code, "lengths_differ");
}

// Pencil: exponential, exact, group 0: 1 3, group 1: 5 7; mean 4. Score of the second
// group: 12 / 4 - 2 = 1. Observed information: sums of t / 4 over all 4, over the
// second group 3: 1 / (3 - 9 / 4).
TEST(AftTests, ScoreByPencil) {
  const Observations observations{{{1, 1}, {0}}, {{3, 3}, {0}}, {{5, 5}, {1}}, {{7, 7}, {1}}};
  const AftOptions options{AftDistribution::exponential};
  const auto score = aft_score_test(observations, 1, options);
  ASSERT_TRUE(score.summary.usable) << score.summary.message;
  EXPECT_NEAR(score.statistic, 1 / 0.75, 1e-10);
  EXPECT_EQ(score.df, 1);
  const auto ratio = aft_likelihood_ratio_test(observations, 1, options);
  EXPECT_NEAR(ratio.statistic, 2 * (4 * std::log(4) - 2 * std::log(2) - 2 * std::log(6)), 1e-10);
  EXPECT_NEAR(ratio.statistic, fit_aft(observations, options).likelihood_ratio, 1e-10);
}

TEST(AftTests, RefuseAndAnswerWhereTheFullFitRunsAway) {
  const Observations separated{
      {{1, 1}, {0}}, {{2, 2}, {0}}, {{4, 4}, {0}}, {{9, kInfinity}, {1}}, {{8, kInfinity}, {1}}};
  EXPECT_EQ(aft_likelihood_ratio_test(separated, 1).summary.problem.code, "not_determined");
  const auto score = aft_score_test(separated, 1);
  ASSERT_TRUE(score.summary.usable) << score.summary.message;
  EXPECT_LT(score.p, 0.05);
  EXPECT_EQ(aft_score_test(separated, 2).summary.problem.code, "tested_out_of_range");
  EXPECT_EQ(aft_score_test({}, 1).summary.problem.code, "tested_out_of_range");
}

} // namespace
