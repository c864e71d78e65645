#include "baize/stats/area_under_curve.h"
#include "baize/stats/binomial.h"
#include "baize/stats/bland_altman.h"
#include "baize/stats/concordance.h"
#include "baize/stats/descriptive.h"
#include "baize/stats/distributions.h"
#include "baize/stats/fleiss_kappa.h"
#include "baize/stats/icc.h"
#include "baize/stats/kappa.h"
#include "baize/stats/krippendorff.h"
#include "baize/stats/studentized_range.h"
#include "unit/special.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace baize;
using stats::Summary;
using stats::Termination;
using Values = std::vector<double>;
using special::kInfinity;
using special::kNan;

constexpr double kHuge = 1e300;

struct Case {
  const char* name;
  Summary summary;
  const char* code;
  Termination termination = Termination::refused;
};

class Unanswerable : public testing::TestWithParam<Case> {};

TEST_P(Unanswerable, IsNeverUsableAndSaysWhy) {
  const Case& one = GetParam();
  EXPECT_FALSE(one.summary.usable);
  EXPECT_EQ(one.summary.termination, one.termination);
  EXPECT_EQ(one.summary.problem.code, one.code);
  EXPECT_EQ(one.summary.message, units::sentence(one.summary.problem));
  EXPECT_FALSE(one.summary.problem.rule.empty());
  EXPECT_FALSE(one.summary.problem.value.empty());
}

std::string name_of(const testing::TestParamInfo<Case>& one) {
  return one.param.name;
}

Summary pairs(const Values& a, const Values& b) {
  return stats::bland_altman(a, b).summary;
}
Summary lin(const Values& a, const Values& b) {
  return stats::concordance(a, b).summary;
}

INSTANTIATE_TEST_SUITE_P(
    Pairs, Unanswerable,
    testing::Values(
        Case{"limits_few", pairs({1, 2}, {1, 3}), "too_few"},
        Case{"limits_none", pairs({}, {}), "too_few"},
        Case{"limits_lengths", pairs({1, 2, 3}, {1, 3}), "lengths_differ"},
        Case{"limits_nan", pairs({1, kNan, 3}, {1, 3, 4}), "not_finite"},
        Case{"limits_infinite", pairs({1, 2, 3}, {1, 3, kInfinity}), "not_finite"},
        Case{"limits_equal", pairs({1, 2, 3}, {2, 3, 4}), "all_equal", Termination::degenerate},
        Case{"limits_huge", pairs({kHuge, 0, 0}, {0, 1, kHuge}), "too_large",
             Termination::degenerate},
        Case{"limits_multiplier",
             stats::bland_altman(Values{1, 2, 4}, Values{1, 3, 4}, {0}).summary,
             "option_out_of_range"},
        Case{"lin_few", lin({1, 2}, {1, 3}), "too_few"},
        Case{"lin_lengths", lin({1, 2, 3}, {1, 3}), "lengths_differ"},
        Case{"lin_nan", lin({1, 2, 3}, {1, kNan, 4}), "not_finite"},
        Case{"lin_first_equal", lin({0.1, 0.1, 0.1}, {1, 3, 4}), "all_equal",
             Termination::degenerate},
        Case{"lin_second_equal", lin({1, 3, 4}, {5, 5, 5}), "all_equal", Termination::degenerate},
        Case{"lin_huge", lin({kHuge, 0, 1}, {0, 1, kHuge}), "too_large", Termination::degenerate},
        Case{"lin_confidence", stats::concordance(Values{1, 2, 4}, Values{1, 3, 4}, {1}).summary,
             "option_out_of_range"}),
    name_of);

Summary icc(const stats::Ratings& ratings, double confidence = 0.95) {
  return stats::intraclass_correlation(ratings, {confidence}).summary;
}
Summary alpha(const std::vector<std::vector<std::optional<double>>>& ratings,
              stats::AlphaMetric metric = stats::AlphaMetric::interval) {
  return stats::krippendorff_alpha(ratings, metric).summary;
}

INSTANTIATE_TEST_SUITE_P(
    ManyObservers, Unanswerable,
    testing::Values(
        Case{"icc_none", icc({}), "too_few"}, Case{"icc_one_item", icc({{1, 2}}), "too_few"},
        Case{"icc_one_observer", icc({{1}, {2}}), "too_few"},
        Case{"icc_ragged", icc({{1, 2}, {2}}), "lengths_differ"},
        Case{"icc_nan", icc({{1, 2}, {2, kNan}}), "not_finite"},
        Case{"icc_equal", icc({{0.1, 0.1}, {0.1, 0.1}}), "all_equal", Termination::degenerate},
        Case{"icc_agree", icc({{1, 1}, {2, 2}}), "all_equal", Termination::degenerate},
        Case{"icc_huge", icc({{kHuge, 1}, {2, 3}}), "too_large", Termination::degenerate},
        Case{"icc_confidence", icc({{1, 2}, {2, 4}}, kNan), "option_out_of_range"},
        Case{"alpha_none", alpha({}), "too_few"}, Case{"alpha_one", alpha({{1}, {2}}), "too_few"},
        Case{"alpha_no_pair", alpha({{1, std::nullopt}, {std::nullopt, 2}}), "too_few"},
        Case{"alpha_nan", alpha({{1, kNan}}), "not_finite"},
        Case{"alpha_below", alpha({{1, -1}}, stats::AlphaMetric::ratio), "below_zero"},
        Case{"alpha_equal", alpha({{1, 1}, {1, 1}}), "all_equal", Termination::degenerate},
        Case{"alpha_huge", alpha({{kHuge, 1}, {1, 2}}), "too_large", Termination::degenerate}),
    name_of);

Summary kappa(const stats::Table& counts, double confidence = 0.95) {
  return stats::cohen_kappa(counts, stats::KappaWeights::linear, {confidence}).summary;
}
Summary weighted(const stats::Table& weights) {
  return stats::weighted_kappa({{3, 1}, {1, 3}}, weights).summary;
}
Summary fleiss(const std::vector<Values>& counts) {
  return stats::fleiss_kappa(counts).summary;
}

INSTANTIATE_TEST_SUITE_P(
    Categories, Unanswerable,
    testing::Values(
        Case{"kappa_none", kappa({}), "too_few"}, Case{"kappa_one", kappa({{4}}), "too_few"},
        Case{"kappa_empty", kappa({{0, 0}, {0, 0}}), "too_few"},
        Case{"kappa_ragged", kappa({{1, 2}, {2}}), "not_square"},
        Case{"kappa_nan", kappa({{1, 2}, {2, kNan}}), "not_finite"},
        Case{"kappa_below", kappa({{1, -2}, {2, 1}}), "below_zero"},
        Case{"kappa_second", kappa({{1, 0}, {2, 0}}), "all_equal", Termination::degenerate},
        Case{"kappa_confidence", kappa({{1, 2}, {2, 4}}, 0), "option_out_of_range"},
        Case{"weights_size", weighted({{0}}), "lengths_differ"},
        Case{"weights_diagonal", weighted({{1, 1}, {1, 0}}), "diagonal_not_zero"},
        Case{"weights_zero", weighted({{0, 0}, {0, 0}}), "too_large", Termination::degenerate},
        Case{"fleiss_none", fleiss({}), "too_few"},
        Case{"fleiss_one_item", fleiss({{1, 2}}), "too_few"},
        Case{"fleiss_one_category", fleiss({{2}, {2}}), "too_few"},
        Case{"fleiss_one_rating", fleiss({{1, 0}, {0, 1}}), "too_few"},
        Case{"fleiss_ragged", fleiss({{1, 2}, {3}}), "lengths_differ"},
        Case{"fleiss_uneven", fleiss({{1, 2}, {3, 1}}), "ratings_differ"},
        Case{"fleiss_below", fleiss({{1, 2}, {4, -1}}), "below_zero"},
        Case{"fleiss_nan", fleiss({{1, 2}, {kNan, 1}}), "not_finite"},
        Case{"fleiss_equal", fleiss({{3, 0}, {3, 0}}), "all_equal", Termination::degenerate}),
    name_of);

Summary area(const Values& times, const Values& values) {
  return stats::area_under_curve(times, values).summary;
}

INSTANTIATE_TEST_SUITE_P(
    OneVariable, Unanswerable,
    testing::Values(
        Case{"describe_none", stats::describe({}).summary, "too_few"},
        Case{"describe_nan", stats::describe(Values{1, kNan}).summary, "not_finite"},
        Case{"describe_huge", stats::describe(Values{kHuge, -kHuge}).summary, "too_large",
             Termination::degenerate},
        Case{"quantile_none", stats::quantile({}, 0.5).summary, "too_few"},
        Case{"quantile_p", stats::quantile(Values{1}, 1.5).summary, "option_out_of_range"},
        Case{"quantile_nan", stats::quantile(Values{kNan}, 0.5).summary, "not_finite"},
        Case{"area_one", area({1}, {1}), "too_few"},
        Case{"area_lengths", area({1, 2}, {1}), "lengths_differ"},
        Case{"area_standing", area({1, 2, 2}, {1, 1, 1}), "not_rising"},
        Case{"area_time_nan", area({1, kNan}, {1, 1}), "not_finite"},
        Case{"area_value_nan", area({1, 2}, {1, kInfinity}), "not_finite"},
        Case{"area_huge", area({0, 1e200}, {kHuge, kHuge}), "too_large", Termination::degenerate},
        Case{"share_none", stats::wilson(0, 0).summary, "too_few"},
        Case{"share_more", stats::wilson(3, 2).summary, "successes_out_of_range"},
        Case{"share_below", stats::clopper_pearson(-1, 2).summary, "successes_out_of_range"},
        Case{"share_confidence", stats::clopper_pearson(1, 2, {kNan}).summary,
             "option_out_of_range"}),
    name_of);

TEST(Refusals, NameTheItemAndTheObserver) {
  EXPECT_EQ(alpha({{1, 2}, {3, kInfinity}}).message,
            "item 2, observer 2: score is 'inf', but must be a finite number.");
  EXPECT_EQ(icc({{1, 2}, {2}}).message, "item 2: scores is '1 values', but must be as many as its "
                                        "partner, 2.");
}

TEST(Distributions, GiveNaNOutsideTheirRange) {
  for (const double value :
       {stats::normal_quantile(-0.1), stats::normal_cdf(kNan), stats::t_quantile(0.5, 0),
        stats::t_cdf(1, kNan), stats::t_upper(1, kInfinity), stats::chi_squared_quantile(1.1, 2),
        stats::chi_squared_cdf(1, -1), stats::f_quantile(0.5, 0, 1), stats::f_upper(1, 1, 0),
        stats::beta_quantile(0.5, 1, kNan), stats::beta_cdf(kNan, 1, 1),
        stats::studentized_range_cdf(-1, 3, 10), stats::studentized_range_cdf(kNan, 3, 10),
        stats::studentized_range_cdf(1, 1, 10), stats::studentized_range_cdf(1, 201, 10),
        stats::studentized_range_upper(1, 3, 0.5), stats::studentized_range_upper(1, 3, kNan),
        stats::studentized_range_quantile(kNan, 3, 10),
        stats::studentized_range_critical(1.5, 3, 10)}) {
    EXPECT_TRUE(std::isnan(value)) << value;
  }
}

TEST(Distributions, ReachTheEndsOfTheirRange) {
  EXPECT_EQ(stats::normal_quantile(0), -kInfinity);
  EXPECT_EQ(stats::t_quantile(1, 5), kInfinity);
  EXPECT_EQ(stats::f_quantile(0, 2, 3), 0);
  EXPECT_EQ(stats::beta_quantile(1, 2, 3), 1);
  EXPECT_EQ(stats::chi_squared_upper(-1, 3), 1);
  EXPECT_EQ(stats::f_upper(kInfinity, 2, 3), 0);
  EXPECT_EQ(stats::studentized_range_quantile(0, 3, 10), 0);
  EXPECT_EQ(stats::studentized_range_critical(0, 3, 10), kInfinity);
  EXPECT_EQ(stats::studentized_range_cdf(kInfinity, 3, 10), 1);
  EXPECT_EQ(stats::studentized_range_upper(0, 3, 10), 1);
}

} // namespace
