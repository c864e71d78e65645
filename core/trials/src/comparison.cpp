#include "baize/trials/comparison.h"

#include "baize/stats/dunnett.h"
#include "baize/stats/mean_comparisons.h"
#include "strata.h"

#include <algorithm>

namespace baize::trials {
namespace {

/// The test of a term, wherever its stratum is; gives that stratum's residual variance.
double find_test(const stats::TrialAnova& anova, const std::vector<std::size_t>& factors,
                 Comparison& comparison) {
  double variance = 0;
  for (const stats::TrialStratum& stratum : anova.strata) {
    for (const stats::TrialTerm& term : stratum.terms) {
      if (term.factors == factors) {
        comparison.f = term.f.value_or(0);
        comparison.p = term.p.value_or(1);
        comparison.df = term.df;
        comparison.error_df = stratum.residual_df;
        variance = stratum.residual_ms;
      }
    }
  }
  return variance;
}

std::vector<double> numbers(const std::vector<Mean>& means) {
  std::vector<double> all;
  all.reserve(means.size());
  for (const Mean& mean : means) {
    all.push_back(mean.mean);
  }
  return all;
}

/// Each pair alone (least significant difference) and among all (Tukey).
void add_pairs(const std::vector<stats::PairDifference>& differences, double confidence,
               Comparison& comparison) {
  const auto means = numbers(comparison.means);
  const double alpha = 1 - confidence;
  const auto alone = stats::compare_means(means, differences,
                                          {stats::PairMethod::least_significant_difference, alpha});
  const auto all = stats::compare_means(means, differences, {stats::PairMethod::tukey, alpha});
  if (!alone.summary.usable || !all.summary.usable) {
    return;
  }
  for (std::size_t i = 0; i < all.pairs.size(); ++i) {
    const stats::ComparedPair& one = alone.pairs[i];
    comparison.pairs.push_back({comparison.means[one.first].name, comparison.means[one.second].name,
                                one.difference, one.standard_error, one.df, one.interval, one.p,
                                all.pairs[i].interval, all.pairs[i].p});
    comparison.lsd = std::max(comparison.lsd, (one.interval.high - one.interval.low) / 2);
  }
  for (std::size_t i = 0; i < all.letters.size(); ++i) {
    comparison.means[i].letters = all.letters[i];
  }
}

/// The control comes first in treatments(plan).
void add_control(double variance, double confidence, Comparison& comparison) {
  std::vector<int> counts;
  counts.reserve(comparison.means.size());
  for (const Mean& mean : comparison.means) {
    counts.push_back(mean.plots);
  }
  stats::DunnettOptions options;
  options.confidence = confidence;
  const auto found =
      stats::dunnett(numbers(comparison.means), counts, 0, variance, comparison.error_df, options);
  for (const stats::DunnettComparison& one : found.comparisons) {
    comparison.against_control.push_back(
        {comparison.means[one.treatment].name, one.difference, one.interval, one.p});
  }
}

std::optional<Comparison> compare(const Plan& plan, const stats::DesignedTrial& trial,
                                  const stats::TrialAnova& anova,
                                  const std::vector<std::size_t>& factors, double confidence) {
  const stats::TrialMeans table = stats::trial_means(trial, factors);
  if (!table.summary.usable) {
    return std::nullopt;
  }
  Comparison comparison;
  comparison.of = factors.size() == 2    ? "both together"
                  : factors.front() == 0 ? "treatment"
                                         : "second treatment";
  const double variance = find_test(anova, factors, comparison);
  for (const stats::TrialMean& mean : table.means) {
    comparison.means.push_back({level_name(plan, factors, mean.level), mean.mean, mean.plots, {}});
  }
  add_pairs(table.differences, confidence, comparison);
  if (factors == std::vector<std::size_t>{0} && !plan.control.empty()) {
    add_control(variance, confidence, comparison);
  }
  return comparison;
}

} // namespace

ValueAnalysis analyse_values(const Plan& plan, const std::vector<std::optional<double>>& values,
                             double confidence) {
  ValueAnalysis result;
  const stats::DesignedTrial trial = designed(plan, values);
  const stats::TrialAnova anova = stats::trial_anova(trial);
  result.summary = anova.summary;
  if (!anova.summary.usable) {
    return result;
  }
  result.strata = anova.strata;
  result.values = anova.y;
  result.lost = anova.lost;
  result.mean = anova.mean;
  result.cv = anova.strata.back().cv;
  std::vector<std::vector<std::size_t>> tables{{0}};
  if (plan.has_second()) {
    tables = {{0}, {1}, {0, 1}};
  }
  for (const auto& factors : tables) {
    if (auto comparison = compare(plan, trial, anova, factors, confidence)) {
      result.comparisons.push_back(std::move(*comparison));
    }
  }
  return result;
}

} // namespace baize::trials
