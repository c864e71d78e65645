#include "baize/stats/aft.h"
#include "unit/special.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <utility>

namespace {

using namespace baize::stats;
using Observations = std::vector<AftObservation>;

using special::kInfinity;
using special::kNan;

constexpr AftDistribution kAll[] = {AftDistribution::exponential, AftDistribution::weibull,
                                    AftDistribution::log_normal, AftDistribution::log_logistic};

AftObservation at(double time, std::vector<double> covariates = {}) {
  return {{time, time}, std::move(covariates)};
}

/// Days to recovery of an invented trial of two tines, seen on visits only.
Observations trial() {
  return {{{7, 14}, {0}},  {{0, 7}, {0}},          {{10, 10}, {0}}, {{14, 21}, {0}},
          {{9, 12}, {0}},  {{21, kInfinity}, {0}}, {{14, 28}, {1}}, {{18, 18}, {1}},
          {{21, 35}, {1}}, {{35, kInfinity}, {1}}, {{12, 20}, {1}}, {{0, 25}, {1}}};
}

// Pencil: exponential, exact and right-censored: rate = ends / time seen = 3 / 24,
// its logarithm's error 1 / sqrt(3); log L = 3 log(1/8) - 3.
TEST(Aft, ExponentialByPencil) {
  const auto fit =
      fit_aft({at(2), at(5), at(7), {{10, kInfinity}, {}}}, {AftDistribution::exponential});
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_NEAR(fit.coefficients[0].value, std::log(8), 1e-12);
  EXPECT_NEAR(fit.coefficients[0].standard_error, 1 / std::sqrt(3), 1e-12);
  EXPECT_NEAR(fit.log_likelihood, -3 * std::log(8) - 3, 1e-12);
  EXPECT_EQ(fit.scale, 1);
  EXPECT_EQ(fit.log_scale_error, 0);
  const auto median = aft_quantile(fit, {}, 0.5);
  EXPECT_NEAR(median->time, 8 * std::numbers::ln2, 1e-11);
  EXPECT_NEAR(median->log_standard_error, 1 / std::sqrt(3), 1e-12);
}

// Pencil: log-normal of exact times: mean and deviation (by n) of the logarithms
// 1, 2, 3, 6; errors scale / sqrt(n) and 1 / sqrt(2 n).
TEST(Aft, LogNormalByPencil) {
  const auto fit = fit_aft({at(std::exp(1)), at(std::exp(2)), at(std::exp(3)), at(std::exp(6))},
                           {AftDistribution::log_normal});
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  const double sd = std::sqrt(3.5);
  EXPECT_NEAR(fit.coefficients[0].value, 3, 1e-11);
  EXPECT_NEAR(fit.scale, sd, 1e-11);
  EXPECT_NEAR(fit.coefficients[0].standard_error, sd / 2, 1e-10);
  EXPECT_NEAR(fit.log_scale_error, 1 / std::sqrt(8), 1e-10);
  EXPECT_NEAR(fit.log_likelihood, -2 * std::log(2 * std::numbers::pi * 3.5) - 2 - 12, 1e-10);
}

// Pencil: exponential, ended by 4: 3 of 4, open at 4: 1 of 4: exp(-4/m) = 1/4.
TEST(Aft, LeftAndRightCensoredByPencil) {
  const auto fit = fit_aft({{{0, 4}, {}}, {{0, 4}, {}}, {{0, 4}, {}}, {{4, kInfinity}, {}}},
                           {AftDistribution::exponential});
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_NEAR(fit.coefficients[0].value, std::log(4 / std::log(4)), 1e-11);
  EXPECT_NEAR(fit.log_likelihood, 3 * std::log(0.75) + std::log(0.25), 1e-12);
}

TEST(Aft, TheKindsAreCounted) {
  const auto fit = fit_aft(trial());
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_EQ(fit.exact, 2);
  EXPECT_EQ(fit.left_censored, 2);
  EXPECT_EQ(fit.right_censored, 2);
  EXPECT_EQ(fit.interval_censored, 6);
  EXPECT_EQ(fit.observations, 12);
  EXPECT_GT(fit.likelihood_ratio, 0);
  EXPECT_GT(fit.likelihood_ratio_p, 0);
  EXPECT_LT(fit.likelihood_ratio_p, 1);
}

TEST(Aft, ATimeThatSaysNothingChangesNothing) {
  for (const auto distribution : kAll) {
    Observations observations = trial();
    const auto before = fit_aft(observations, {distribution});
    observations.push_back({{0, kInfinity}, {0}});
    const auto after = fit_aft(observations, {distribution});
    EXPECT_NEAR(after.log_likelihood, before.log_likelihood, 1e-9);
    EXPECT_NEAR(after.coefficients[1].value, before.coefficients[1].value, 1e-7);
  }
}

// Law: an interval much narrower than the scatter is its middle, in the errors too. The
// log-normal's second derivatives lose digits there, the others' do not.
TEST(Aft, ANarrowIntervalIsATime) {
  for (const auto distribution : kAll) {
    Observations exact;
    Observations narrow;
    for (const double time : {4, 9, 11, 12, 14, 17, 21, 60, 900}) {
      const std::vector<double> later{time > 13 ? 1.0 : 0.0};
      exact.push_back({{time, time}, later});
      narrow.push_back({{time * (1 - 1e-5), time * (1 + 1e-5)}, later});
    }
    const auto want = fit_aft(exact, {distribution});
    const auto got = fit_aft(narrow, {distribution});
    ASSERT_TRUE(want.summary.usable && got.summary.usable);
    const double digits = distribution == AftDistribution::log_normal ? 1e-5 : 1e-8;
    EXPECT_NEAR(got.coefficients[1].value, want.coefficients[1].value, digits);
    EXPECT_NEAR(got.coefficients[1].standard_error, want.coefficients[1].standard_error, digits);
    EXPECT_NEAR(got.scale, want.scale, digits);
    EXPECT_NEAR(got.log_scale_error, want.log_scale_error, digits);
  }
}

// Where groups lie hundreds of scales apart, the fit with a constant only is far from
// the one with them, and each look lies in a far tail of where it starts.
TEST(Aft, GroupsFarApartAreComparedWithOneConstant) {
  for (const auto distribution : kAll) {
    Observations apart;
    Observations together;
    for (int i = 0; i < 12; ++i) {
      const bool late = i % 2 == 1;
      const double time = (late ? 40000 : 20) + i;
      apart.push_back({{time, time + (i % 3)}, {late ? 1.0 : 0.0}});
      together.push_back({apart.back().time, {}});
    }
    const auto fit = fit_aft(apart, {distribution});
    const auto one = fit_aft(together, {distribution});
    ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
    ASSERT_TRUE(one.summary.usable) << one.summary.message;
    EXPECT_NEAR(fit.log_likelihood_null, one.log_likelihood, 1e-9);
    EXPECT_NEAR(fit.coefficients[1].value, std::log(40006.5 / 25.5), 0.1);
  }
}

// One time between far from 400 that agree to the minute: at their scale both its ends lie
// hundreds of scales off, where the hazard of the one is next to nothing beside the other's.
// The log-likelihood must be that of the definition there, by logarithms.
TEST(Aft, OneTimeHundredsOfScalesOff) {
  Observations works(400, at(14));
  works.push_back({{7, 10}, {}});
  const auto fit = fit_aft(works, {AftDistribution::weibull});
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  const auto w = [&](double days) {
    return (std::log(days) - fit.coefficients[0].value) / fit.scale;
  };
  // Where exp(w) is next to 0: log(exp(-exp a) - exp(-exp b)) = b + log(1 - exp(a - b)).
  const double one = w(10) + std::log1p(-std::exp(w(7) - w(10)));
  const double others = w(14) - std::exp(w(14)) - std::log(14 * fit.scale);
  EXPECT_LT(w(10), -300);
  EXPECT_NEAR(fit.log_likelihood, one + 400 * others, 1e-6);
}

std::string code(const AftFit& fit) {
  EXPECT_FALSE(fit.summary.usable);
  EXPECT_FALSE(aft_quantile(fit, {}, 0.5));
  return fit.summary.problem.code;
}

TEST(Aft, RefusesInOneSentence) {
  EXPECT_EQ(code(fit_aft({})), "too_few");
  EXPECT_EQ(code(fit_aft({at(1, {0}), at(2, {1}), at(4, {0})})), "too_few");
  EXPECT_EQ(code(fit_aft({at(1, {0}), at(2, {}), at(4, {0}), at(4, {0})})), "lengths_differ");
  EXPECT_EQ(code(fit_aft({at(1, {kNan}), at(2, {1}), at(4, {0}), at(3, {1})})), "not_finite");
  EXPECT_EQ(code(fit_aft({at(kNan), at(2), at(4)})), "time_out_of_range");
  EXPECT_EQ(code(fit_aft({at(0), at(2), at(4)})), "time_out_of_range");
  EXPECT_EQ(code(fit_aft({{{5, 4}, {}}, at(2), at(4)})), "time_out_of_range");
  EXPECT_EQ(code(fit_aft(trial(), {AftDistribution::weibull, 0})), "option_out_of_range");
  EXPECT_EQ(fit_aft({at(1), at(0), at(4)}).summary.message,
            "observation 2: time is '0 exactly', but must be above 0 where it is exact.");
}

TEST(Aft, WhatTheDataCannotAnswerIsDegenerate) {
  const AftObservation open{{5, kInfinity}, {}};
  const AftObservation by{{0, 5}, {}};
  for (const auto distribution : kAll) {
    const AftOptions options{distribution};
    EXPECT_EQ(code(fit_aft({open, open, open}, options)), "all_censored");
    EXPECT_EQ(code(fit_aft({by, by, by}, options)), "all_censored");
    EXPECT_EQ(code(fit_aft({at(1, {3}), at(2, {3}), at(4, {3}), at(5, {3})}, options)),
              "singular_design");
    EXPECT_EQ(
        code(fit_aft({at(1, {1, 2}), at(2, {2, 4}), at(4, {0, 0}), at(5, {3, 6}), at(3, {1, 2})},
                     options)),
        "singular_design");
    // Nothing of the second group ever ended: its time may be any, however long.
    EXPECT_EQ(
        code(fit_aft(
            {at(1, {0}), at(2, {0}), at(4, {0}), {{9, kInfinity}, {1}}, {{8, kInfinity}, {1}}},
            options)),
        "not_determined");
  }
  for (const auto distribution :
       {AftDistribution::weibull, AftDistribution::log_normal, AftDistribution::log_logistic}) {
    const AftOptions options{distribution};
    EXPECT_EQ(code(fit_aft({at(3), at(3), at(3), at(3)}, options)), "not_determined");
    // The one time 6 satisfies all of them.
    EXPECT_EQ(
        code(fit_aft({{{5, 9}, {}}, {{4, 7}, {}}, {{5, 8}, {}}, {{3, kInfinity}, {}}}, options)),
        "not_determined");
  }
}

TEST(Aft, ALimitOfIterationsIsNotASuccess) {
  const auto fit = fit_aft(trial(), {AftDistribution::weibull, 1});
  EXPECT_EQ(fit.summary.termination, Termination::not_converged);
  EXPECT_FALSE(fit.summary.usable);
}

TEST(Aft, QuantilesNeedTheirCovariates) {
  const auto fit = fit_aft(trial());
  EXPECT_TRUE(aft_quantile(fit, {1}, 0.5));
  EXPECT_FALSE(aft_quantile(fit, {}, 0.5));
  EXPECT_FALSE(aft_quantile(fit, {1}, 1));
  EXPECT_FALSE(aft_quantile(fit, {1}, kNan));
  EXPECT_FALSE(aft_quantile(fit, {kNan}, 0.5));
  // The greater covariate stretches every quantile by the same factor.
  const double factor = std::exp(fit.coefficients[1].value);
  for (const double share : {0.1, 0.5, 0.9}) {
    EXPECT_NEAR(aft_quantile(fit, {1}, share)->time / aft_quantile(fit, {0}, share)->time, factor,
                1e-12);
  }
}

Observations drawn() {
  const auto size = *rc::gen::inRange<std::size_t>(12, 60);
  Observations observations = trial();
  for (std::size_t i = 0; i < size; ++i) {
    const double left = *rc::gen::inRange(1, 30);
    const int kind = *rc::gen::inRange(0, 5);
    const double right = left + *rc::gen::inRange(1, 12);
    const double x = *rc::gen::inRange(0, 2);
    observations.push_back({{kind == 0 ? 0 : left, kind == 1   ? kInfinity
                                                   : kind == 2 ? left
                                                               : right},
                            {x}});
  }
  return observations;
}

AftDistribution any() {
  return kAll[*rc::gen::inRange(0, 4)];
}

RC_GTEST_PROP(AftLaws, TheOrderOfTheRowsChangesNothing, ()) {
  Observations observations = drawn();
  const AftOptions options{any()};
  const auto before = fit_aft(observations, options);
  std::reverse(observations.begin(), observations.end());
  const auto after = fit_aft(observations, options);
  RC_ASSERT(before.summary.usable && after.summary.usable);
  RC_ASSERT(std::fabs(before.log_likelihood - after.log_likelihood) < 1e-8);
  RC_ASSERT(std::fabs(before.coefficients[1].value - after.coefficients[1].value) < 1e-7);
}

RC_GTEST_PROP(AftLaws, TheUnitOfTimeMovesTheConstantOnly, ()) {
  Observations observations = drawn();
  const AftOptions options{any()};
  const auto days = fit_aft(observations, options);
  for (auto& one : observations) {
    one.time.left *= 24;
    one.time.right *= 24;
  }
  const auto hours = fit_aft(observations, options);
  RC_ASSERT(days.summary.usable && hours.summary.usable);
  RC_ASSERT(std::fabs(hours.coefficients[0].value - days.coefficients[0].value - std::log(24)) <
            1e-7);
  RC_ASSERT(std::fabs(hours.coefficients[1].value - days.coefficients[1].value) < 1e-7);
  RC_ASSERT(std::fabs(hours.coefficients[1].standard_error - days.coefficients[1].standard_error) <
            1e-6);
  RC_ASSERT(std::fabs(hours.scale - days.scale) < 1e-7);
  // Each exact time's density is per hour instead of per day.
  RC_ASSERT(std::fabs(days.log_likelihood - hours.log_likelihood - days.exact * std::log(24)) <
            1e-7);
}

RC_GTEST_PROP(AftLaws, AddingAConstantToACovariateMovesTheConstantOnly, ()) {
  Observations observations = drawn();
  const AftOptions options{any()};
  const auto before = fit_aft(observations, options);
  for (auto& one : observations) {
    one.covariates[0] = 3 * one.covariates[0] + 50;
  }
  const auto after = fit_aft(observations, options);
  RC_ASSERT(before.summary.usable && after.summary.usable);
  RC_ASSERT(std::fabs(after.log_likelihood - before.log_likelihood) < 1e-8);
  RC_ASSERT(std::fabs(3 * after.coefficients[1].value - before.coefficients[1].value) < 1e-7);
  RC_ASSERT(std::fabs(after.coefficients[0].value + 50 * after.coefficients[1].value -
                      before.coefficients[0].value) < 1e-6);
  RC_ASSERT(std::fabs(aft_quantile(after, {53}, 0.5)->time / aft_quantile(before, {1}, 0.5)->time -
                      1) < 1e-7);
}

} // namespace
