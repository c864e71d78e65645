// Trials in blocks without any treatment effect, and with one: how often do the
// ways of comparing means claim a difference, and do their intervals hold?
#include "baize/stats/trial_means.h"

#include "baize/stats/designed_trial.h"
#include "baize/stats/dunnett.h"
#include "baize/stats/mean_comparisons.h"
#include "baize/stats/random.h"
#include "studies.h"

#include <fmt/format.h>

#include <algorithm>

namespace baize::evidence {
namespace {

constexpr double kBlockSd = 0.4;
constexpr double kPlotSd = 0.3;
constexpr int kTreatments = 5;

stats::DesignedTrial trial_of(int blocks, double last, bool loses_one, stats::Random& chance) {
  stats::DesignedTrial trial;
  stats::Grouping treatment{"method", {}};
  stats::Grouping block{"block", {}};
  for (int b = 0; b < blocks; ++b) {
    const double ground = 7 + kBlockSd * chance.normal();
    for (int t = 0; t < kTreatments; ++t) {
      treatment.level.push_back(t);
      block.level.push_back(b);
      trial.y.emplace_back(ground + (t == kTreatments - 1 ? last : 0) + kPlotSd * chance.normal());
    }
  }
  if (loses_one) {
    trial.y[chance.below(trial.y.size())].reset();
  }
  trial.treatments.push_back(std::move(treatment));
  trial.strata.push_back(std::move(block));
  return trial;
}

struct Claims {
  Rate anova;
  Rate tukey;
  Rate dunnett;
  Rate fisher_any;
  Rate fisher_pair;
};

void claim(const stats::DesignedTrial& trial, int blocks, Claims& claims) {
  const auto anova = stats::trial_anova(trial);
  const auto table = stats::trial_means(trial, {0});
  if (!anova.summary.usable || !table.summary.usable) {
    return;
  }
  const auto& plots = anova.strata.back();
  claims.anova.add(plots.terms.front().p.value_or(1) < 0.05);
  std::vector<double> means;
  for (const auto& one : table.means) {
    means.push_back(one.mean);
  }
  stats::MeanComparisonOptions options;
  const auto any = [](const stats::MeanComparisons& found) {
    return std::any_of(found.pairs.begin(), found.pairs.end(),
                       [](const stats::ComparedPair& pair) { return pair.significant; });
  };
  claims.tukey.add(any(stats::compare_means(means, table.differences, options)));
  options.method = stats::PairMethod::least_significant_difference;
  const auto fisher = stats::compare_means(means, table.differences, options);
  claims.fisher_any.add(any(fisher));
  claims.fisher_pair.add(fisher.pairs.front().significant);
  const auto against = stats::dunnett(means, std::vector<int>(means.size(), blocks), 0,
                                      plots.residual_ms, plots.residual_df);
  claims.dunnett.add(std::any_of(against.comparisons.begin(), against.comparisons.end(),
                                 [](const auto& one) { return one.p < 0.05; }));
}

void claims_rows(int worlds, int blocks, Table& table) {
  Claims claims;
  for (int world = 0; world < worlds; ++world) {
    stats::Random chance(601, static_cast<std::uint64_t>(world));
    claim(trial_of(blocks, 0, false, chance), blocks, claims);
  }
  const std::string in = fmt::format(", {} blocks", blocks);
  table.rows.push_back(claims.anova.row("F test" + in));
  table.rows.push_back(claims.tukey.row("Tukey, any pair" + in));
  table.rows.push_back(claims.dunnett.row("Dunnett, any against the control" + in));
  table.rows.push_back(claims.fisher_pair.row("least significant difference, one pair" + in));
  table.rows.push_back(claims.fisher_any.row("least significant difference, any pair" + in));
}

void coverage_row(int worlds, int blocks, bool loses_one, Table& table) {
  const double truth = 0.5;
  Coverage coverage;
  for (int world = 0; world < worlds; ++world) {
    stats::Random chance(602, static_cast<std::uint64_t>(world));
    std::vector<double> contrast(kTreatments, 0);
    contrast.front() = -1;
    contrast.back() = 1;
    const auto found =
        stats::trial_contrast(trial_of(blocks, truth, loses_one, chance), {0}, contrast);
    if (found.summary.usable) {
      coverage.add(truth, found.estimate, found.interval);
    } else {
      coverage.refuse();
    }
  }
  table.rows.push_back(
      coverage.row(fmt::format("{} blocks{}", blocks, loses_one ? ", one plot lost" : "")));
}

} // namespace

Study trial_means(int worlds) {
  Study study{
      "trial_means",
      "Trials in blocks",
      "Five treatments in 3, 4 or 6 randomised complete blocks; blocks differ by a standard "
      "deviation of 0.4 points, plots by 0.3. First all treatments are alike: how often is "
      "a difference claimed at 5 %? Then the fifth is half a point better than the first: "
      "does the interval of that difference hold it, also with a plot lost?",
      {},
      {}};
  Table claims{"Claims where there is nothing", Rate::header("method", "claimed"), {}};
  Table coverage{"Coverage of a difference of 0.5 points", Coverage::header("trial"), {}};
  for (const int blocks : {3, 4, 6}) {
    claims_rows(worlds, blocks, claims);
    coverage_row(worlds, blocks, false, coverage);
    coverage_row(worlds, blocks, true, coverage);
  }
  study.tables = {std::move(claims), std::move(coverage)};
  study.findings = {
      "The F test, Tukey and Dunnett claim in vain as often as they say. The least significant "
      "difference does so for one pair chosen beforehand, and far more often for any of ten: use "
      "it only after the F test."};
  return study;
}

} // namespace baize::evidence
