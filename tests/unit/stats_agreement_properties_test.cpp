#include "baize/stats/area_under_curve.h"
#include "baize/stats/binomial.h"
#include "baize/stats/bland_altman.h"
#include "baize/stats/concordance.h"
#include "baize/stats/distributions.h"
#include "baize/stats/icc.h"
#include "baize/stats/kappa.h"
#include "baize/stats/krippendorff.h"
#include "baize/stats/studentized_range.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace {

using namespace baize;
using Values = std::vector<double>;

bool near(double a, double b, double within = 1e-9) {
  return std::fabs(a - b) <= within * std::max({1.0, std::fabs(a), std::fabs(b)});
}

/// Whole scores, so that shifts and sums are exact; never all equal.
Values any_scores(std::size_t n) {
  Values scores;
  for (std::size_t i = 0; i < n; ++i) {
    scores.push_back(*rc::gen::inRange(1, 11));
  }
  scores[0] = scores[1] == 10 ? 1 : scores[1] + 1;
  return scores;
}

std::size_t any_size() {
  return *rc::gen::inRange<std::size_t>(3, 15);
}

stats::Ratings any_ratings() {
  stats::Ratings ratings(any_size(), Values(*rc::gen::inRange<std::size_t>(2, 5)));
  for (auto& row : ratings) {
    for (double& score : row) {
      score = *rc::gen::inRange(1, 11);
    }
  }
  return ratings;
}

template <class Rows> Rows reversed(Rows rows) {
  std::reverse(rows.begin(), rows.end());
  return rows;
}

RC_GTEST_PROP(BlandAltmanLaws, SwappingObserversMirrorsAndShiftsMoveOnlyTheBias, ()) {
  const auto n = any_size();
  const auto a = any_scores(n);
  const auto b = any_scores(n);
  const auto forth = stats::bland_altman(a, b);
  const auto back = stats::bland_altman(b, a);
  RC_ASSERT(forth.summary.termination == back.summary.termination);
  RC_PRE(forth.summary.usable);
  RC_ASSERT(near(forth.bias, -back.bias));
  RC_ASSERT(near(forth.limits.low, -back.limits.high));
  RC_ASSERT(near(forth.lower_limit_interval.low, -back.upper_limit_interval.high));
  auto shifted = a;
  for (double& score : shifted) {
    score = 2 * score + 100;
  }
  auto scaled = b;
  for (double& score : scaled) {
    score *= 2;
  }
  const auto moved = stats::bland_altman(shifted, scaled);
  RC_ASSERT(near(moved.bias, 2 * forth.bias + 100));
  RC_ASSERT(near(moved.sd, 2 * forth.sd));
  RC_ASSERT(near(moved.limit_se, 2 * forth.limit_se));
}

RC_GTEST_PROP(ConcordanceLaws, NeitherOrderNorUnitMatters, ()) {
  const auto n = any_size();
  auto a = any_scores(n);
  auto b = any_scores(n);
  const auto found = stats::concordance(a, b);
  RC_ASSERT(found.summary.usable);
  RC_ASSERT(std::fabs(found.coefficient) <= std::fabs(found.correlation) + 1e-12);
  RC_ASSERT(found.accuracy <= 1 + 1e-12);
  const auto swapped = stats::concordance(b, a);
  RC_ASSERT(near(found.coefficient, swapped.coefficient));
  RC_ASSERT(found.z_se.has_value() == swapped.z_se.has_value());
  for (std::size_t i = 0; i < n; ++i) {
    a[i] = 50 - 3 * a[i];
    b[i] = 50 - 3 * b[i];
  }
  RC_ASSERT(near(found.coefficient, stats::concordance(a, b).coefficient));
  RC_ASSERT(near(stats::concordance(a, a).coefficient, 1));
  if (found.interval) {
    RC_ASSERT(found.interval->low <= found.coefficient);
    RC_ASSERT(found.interval->high >= found.coefficient);
  }
}

std::vector<stats::IccForm> forms(const stats::Icc& of) {
  return {of.one_way_single, of.random_single, of.fixed_single,
          of.one_way_mean,   of.fixed_mean,    of.random_mean.value_or(stats::IccForm{0, {0, 0}})};
}

RC_GTEST_PROP(IccLaws, NeitherItemsNorObserversNorUnitsHaveAnOrder, ()) {
  const auto ratings = any_ratings();
  const auto found = stats::intraclass_correlation(ratings);
  auto other = reversed(ratings);
  for (auto& row : other) {
    std::reverse(row.begin(), row.end());
    for (double& score : row) {
      score = 5 * score - 70;
    }
  }
  const auto same = stats::intraclass_correlation(other);
  RC_ASSERT(found.summary.termination == same.summary.termination);
  RC_PRE(found.summary.usable);
  for (std::size_t i = 0; i < 6; ++i) {
    const auto a = forms(found)[i];
    const auto b = forms(same)[i];
    RC_ASSERT(near(a.value, b.value, 1e-8));
    RC_ASSERT(near(a.interval.low, b.interval.low, 1e-6));
    RC_ASSERT(near(a.interval.high, b.interval.high, 1e-6));
    RC_ASSERT(a.interval.low <= a.value + 1e-9);
    RC_ASSERT(a.interval.high >= a.value - 1e-9);
    RC_ASSERT(a.value <= 1);
  }
}

RC_GTEST_PROP(IccLaws, AConstantBiasOfAnObserverLeavesTheFixedForm, ()) {
  auto ratings = any_ratings();
  const auto before = stats::intraclass_correlation(ratings);
  RC_PRE(before.summary.usable);
  for (auto& row : ratings) {
    row[0] += 30;
  }
  const auto after = stats::intraclass_correlation(ratings);
  RC_ASSERT(near(before.fixed_single.value, after.fixed_single.value));
  RC_ASSERT(after.one_way_single.value <= before.one_way_single.value + 1e-9);
}

stats::Table any_table() {
  const auto size = *rc::gen::inRange<std::size_t>(2, 6);
  stats::Table table(size, Values(size));
  for (auto& row : table) {
    for (double& cell : row) {
      cell = *rc::gen::inRange(0, 9);
    }
  }
  return table;
}

stats::Table transposed(const stats::Table& table) {
  auto turned = table;
  for (std::size_t i = 0; i < table.size(); ++i) {
    for (std::size_t j = 0; j < table.size(); ++j) {
      turned[i][j] = table[j][i];
    }
  }
  return turned;
}

RC_GTEST_PROP(KappaLaws, SwappingObserversOrTurningTheScaleChangesNothing, ()) {
  const auto table = any_table();
  auto turned = reversed(table);
  for (auto& row : turned) {
    std::reverse(row.begin(), row.end());
  }
  for (const auto weights :
       {stats::KappaWeights::none, stats::KappaWeights::linear, stats::KappaWeights::quadratic}) {
    const auto found = stats::cohen_kappa(table, weights);
    for (const auto& other : {transposed(table), turned}) {
      const auto same = stats::cohen_kappa(other, weights);
      RC_ASSERT(found.summary.termination == same.summary.termination);
      if (found.summary.usable) {
        RC_ASSERT(near(found.value, same.value));
        RC_ASSERT(near(found.se, same.se));
        RC_ASSERT(near(found.null_se, same.null_se));
        RC_ASSERT(found.value <= 1 + 1e-12);
      }
    }
  }
}

RC_GTEST_PROP(KappaLaws, UnusedScoresChangeNothing, ()) {
  const auto table = any_table();
  auto wider = table;
  for (auto& row : wider) {
    row.push_back(0);
  }
  wider.emplace_back(wider.size() + 1, 0.0);
  const auto a = stats::cohen_kappa(table, stats::KappaWeights::quadratic);
  const auto b = stats::cohen_kappa(wider, stats::KappaWeights::quadratic);
  RC_ASSERT(a.summary.termination == b.summary.termination);
  RC_PRE(a.summary.usable);
  RC_ASSERT(near(a.value, b.value));
  RC_ASSERT(near(a.se, b.se));
}

RC_GTEST_PROP(AlphaLaws, NeitherItemsNorObserversNorUnitsHaveAnOrder, ()) {
  const auto complete = any_ratings();
  std::vector<std::vector<std::optional<double>>> ratings;
  for (const auto& row : complete) {
    ratings.emplace_back(row.begin(), row.end());
    if (*rc::gen::inRange(0, 3) == 0) {
      ratings.back()[0].reset();
    }
  }
  auto other = reversed(ratings);
  for (auto& row : other) {
    std::reverse(row.begin(), row.end());
    for (auto& cell : row) {
      cell = cell ? std::optional(*cell * 4) : cell;
    }
  }
  for (const auto metric : {stats::AlphaMetric::nominal, stats::AlphaMetric::ordinal,
                            stats::AlphaMetric::interval, stats::AlphaMetric::ratio}) {
    const auto a = stats::krippendorff_alpha(ratings, metric);
    const auto b = stats::krippendorff_alpha(other, metric);
    RC_ASSERT(a.summary.termination == b.summary.termination);
    if (a.summary.usable) {
      RC_ASSERT(near(a.value, b.value));
      RC_ASSERT(a.value <= 1);
      RC_ASSERT(near(a.se.value_or(0), b.se.value_or(0)));
    }
  }
}

RC_GTEST_PROP(BinomialLaws, SwappingYesAndNoMirrors, ()) {
  const int n = *rc::gen::inRange(1, 400);
  const int x = *rc::gen::inRange(0, n + 1);
  for (const auto method : {stats::clopper_pearson, stats::wilson}) {
    const auto yes = method(x, n, {});
    const auto no = method(n - x, n, {});
    RC_ASSERT(near(yes.interval.low, 1 - no.interval.high, 1e-11));
    RC_ASSERT(yes.interval.low <= yes.share && yes.share <= yes.interval.high);
    const auto wider = method(x, n, {0.99});
    RC_ASSERT(wider.interval.low <= yes.interval.low && yes.interval.high <= wider.interval.high);
  }
}

RC_GTEST_PROP(AreaLaws, AreasOfPartsAdd, ()) {
  const auto n = any_size();
  const auto values = any_scores(n);
  Values times{0};
  while (times.size() < n) {
    times.push_back(times.back() + *rc::gen::inRange(1, 20));
  }
  const auto at = static_cast<std::ptrdiff_t>(*rc::gen::inRange<std::size_t>(1, n - 1));
  const auto whole = stats::area_under_curve(times, values);
  const auto early = stats::area_under_curve(Values(times.begin(), times.begin() + at + 1),
                                             Values(values.begin(), values.begin() + at + 1));
  const auto late = stats::area_under_curve(Values(times.begin() + at, times.end()),
                                            Values(values.begin() + at, values.end()));
  RC_ASSERT(near(whole.trapezoid, early.trapezoid + late.trapezoid));
  RC_ASSERT(whole.mean_height <= *std::max_element(values.begin(), values.end()) + 1e-12);
}

RC_GTEST_PROP(DistributionLaws, QuantilesTurnBack, ()) {
  const double p = *rc::gen::inRange(1, 1000) / 1000.0;
  const double a = *rc::gen::inRange(1, 200) / 4.0;
  const double b = *rc::gen::inRange(1, 200) / 4.0;
  RC_ASSERT(near(stats::normal_cdf(stats::normal_quantile(p)), p, 1e-12));
  RC_ASSERT(near(stats::t_cdf(stats::t_quantile(p, a), a), p, 1e-10));
  RC_ASSERT(near(stats::chi_squared_cdf(stats::chi_squared_quantile(p, a), a), p, 1e-10));
  RC_ASSERT(near(stats::f_cdf(stats::f_quantile(p, a, b), a, b), p, 1e-10));
  RC_ASSERT(near(stats::beta_cdf(stats::beta_quantile(p, a, b), a, b), p, 1e-10));
  RC_ASSERT(near(stats::f_upper(2, a, b) + stats::f_cdf(2, a, b), 1, 1e-12));
}

RC_GTEST_PROP(StudentizedRangeLaws, TailsAddUpAndQuantilesTurnBack, ()) {
  const int k = *rc::gen::inRange(2, 30);
  const double df = *rc::gen::inRange(1, 200);
  const double q = *rc::gen::inRange(1, 1500) / 100.0;
  const double lower = stats::studentized_range_cdf(q, k, df);
  const double upper = stats::studentized_range_upper(q, k, df);
  RC_ASSERT(near(lower + upper, 1, 1e-12));
  RC_ASSERT(stats::studentized_range_upper(q, k + 1, df) >= upper * (1 - 1e-12));
  RC_ASSERT(stats::studentized_range_upper(q + 0.01, k, df) <= upper * (1 + 1e-12));
  if (upper > 1e-280 && upper <= 0.5) {
    RC_ASSERT(near(stats::studentized_range_critical(upper, k, df), q));
  }
  if (lower > 1e-280 && lower < 0.5) {
    RC_ASSERT(near(stats::studentized_range_quantile(lower, k, df), q));
  }
}

} // namespace
