#include "baize/stats/trial_means.h"

#include "baize/stats/distributions.h"
#include "checks.h"
#include "trial_filling.h"

#include <algorithm>

namespace baize::stats {
namespace {

using detail::Column;
using detail::squared_length;
using units::Problem;

/// What comparisons need, worked out once.
struct Table {
  detail::Layout layout;
  detail::Filling fill;
  TrialAnova anova;
  detail::Partition cells;
  std::vector<TrialMean> means;
};

std::optional<Problem> bad_factors(const std::vector<std::size_t>& factors, std::size_t count) {
  auto problem = too_few("factors", factors.size(), 1);
  for (std::size_t i = 0; i < factors.size() && !problem; ++i) {
    if (factors[i] >= count || (i > 0 && factors[i] <= factors[i - 1])) {
      problem = Problem{"no_such_factor", "factors", std::to_string(factors[i]),
                        "places of treatments, from 0, ascending", ""};
    }
  }
  return problem;
}

void fill_means(const DesignedTrial& trial, const std::vector<std::size_t>& factors, Table& table) {
  table.means.resize(table.cells.classes());
  for (std::size_t i = 0; i < trial.y.size(); ++i) {
    const std::size_t cell = table.cells.of[i];
    TrialMean& mean = table.means[cell];
    mean.mean += static_cast<double>(table.anova.y[i] / table.cells.size[cell]);
    mean.plots += trial.y[i] ? 1 : 0;
    mean.level.clear();
    for (const std::size_t k : factors) {
      mean.level.push_back(trial.treatments[k].level[i]);
    }
  }
}

units::Result<Table> table_of(const DesignedTrial& trial, const std::vector<std::size_t>& factors,
                              const TrialOptions& options) {
  Table table;
  table.anova = trial_anova(trial, options);
  if (table.anova.summary.termination == Termination::refused) {
    return units::Refusal(table.anova.summary.problem);
  }
  if (auto problem = bad_factors(factors, trial.treatments.size())) {
    return units::Refusal(*problem);
  }
  table.layout = *detail::trial_layout(trial, options);
  table.fill = detail::filling(table.layout, detail::lost_plots(trial));
  table.cells = table.layout.whole;
  for (const std::size_t k : factors) {
    table.cells = detail::crossed(table.cells, detail::partition(trial.treatments[k].level));
  }
  if (table.cells.classes() > 200) {
    return units::Refusal(
        {"too_many", "means", std::to_string(table.cells.classes()), "at most 200", ""});
  }
  fill_means(trial, factors, table);
  return table;
}

/// The comparison as weights of the values that are there.
Column weights_of(const Table& table, const std::vector<double>& coefficients) {
  Column weights;
  for (const std::size_t cell : table.cells.of) {
    weights.push_back(coefficients[cell] / table.cells.size[cell]);
  }
  for (std::size_t i = 0; i < table.fill.lost.size(); ++i) {
    const long double weight = weights[table.fill.lost[i]];
    for (std::size_t k = 0; k < weights.size(); ++k) {
      weights[k] += weight * table.fill.weights[i][k];
    }
  }
  for (const std::size_t plot : table.fill.lost) {
    weights[plot] = 0;
  }
  return weights;
}

struct Error {
  double standard_error = 0;
  double df = 0;
};

/// Absent where a stratum that takes part has no residual.
std::optional<Error> error_of(const Table& table, const Column& weights) {
  const long double all = squared_length(weights);
  double variance = 0;
  double doubt = 0;
  for (std::size_t s = 0; s < table.layout.strata.size(); ++s) {
    const long double part = squared_length(detail::in_stratum(table.layout, s, weights));
    if (part <= 1e-14L * all) {
      continue;
    }
    const TrialStratum& stratum = table.anova.strata[s];
    if (stratum.residual_df <= 0) {
      return std::nullopt;
    }
    const double share = static_cast<double>(part) * stratum.residual_ms;
    variance += share;
    doubt += share * share / stratum.residual_df;
  }
  return variance > 0 ? std::optional<Error>({std::sqrt(variance), variance * variance / doubt})
                      : std::nullopt;
}

double value_of(const Table& table, const std::vector<double>& coefficients) {
  long double sum = 0;
  for (std::size_t i = 0; i < coefficients.size(); ++i) {
    sum += static_cast<long double>(coefficients[i]) * table.means[i].mean;
  }
  return static_cast<double>(sum);
}

Summary no_residual() {
  return degenerate({"no_residual", "means", "compared across units without an error of their own",
                     "compared within strata that have residual spread", ""});
}

std::optional<Problem> not_a_contrast(const std::vector<double>& coefficients, std::size_t means) {
  auto problem = lengths_differ("coefficients", coefficients.size(), means);
  problem = problem ? problem : not_finite("coefficients", coefficients);
  if (problem) {
    return problem;
  }
  double sum = 0;
  for (const double one : coefficients) {
    sum += one;
  }
  const double largest = largest_of(coefficients);
  if (largest > 0 && std::fabs(sum) <= 1e-9 * largest) {
    return std::nullopt;
  }
  return Problem{"not_a_contrast", "coefficients", "with sum " + units::write_number(sum),
                 "of sum 0 and not all 0", ""};
}

} // namespace

std::vector<PairDifference> pair_differences(const std::vector<double>& means,
                                             const std::vector<int>& counts, double variance,
                                             double df) {
  std::vector<PairDifference> pairs;
  const std::size_t size = std::min(means.size(), counts.size());
  for (std::size_t i = 0; i < size; ++i) {
    for (std::size_t k = i + 1; k < size; ++k) {
      if (counts[i] > 0 && counts[k] > 0) {
        const double error = std::sqrt(variance * (1.0 / counts[i] + 1.0 / counts[k]));
        pairs.push_back({i, k, means[i] - means[k], error, df});
      }
    }
  }
  return pairs;
}

TrialMeans trial_means(const DesignedTrial& trial, const std::vector<std::size_t>& factors,
                       const TrialOptions& options) {
  TrialMeans result;
  const auto table = table_of(trial, factors, options);
  if (!table) {
    result.summary = refused(table.error());
    return result;
  }
  const std::size_t size = table->means.size();
  for (std::size_t i = 0; i < size; ++i) {
    for (std::size_t k = i + 1; k < size; ++k) {
      std::vector<double> coefficients(size, 0);
      coefficients[i] = 1;
      coefficients[k] = -1;
      const auto error = error_of(*table, weights_of(*table, coefficients));
      if (!error) {
        result.differences.clear();
        result.summary = no_residual();
        return result;
      }
      result.differences.push_back(
          {i, k, value_of(*table, coefficients), error->standard_error, error->df});
    }
  }
  result.means = table->means;
  result.summary = table->anova.summary;
  return result;
}

std::optional<Problem> ContrastOptions::problem() const {
  auto problem = trial.problem();
  return problem ? problem : outside_open("confidence", confidence, 0, 1, "above 0 and below 1");
}

TrialContrast trial_contrast(const DesignedTrial& trial, const std::vector<std::size_t>& factors,
                             const std::vector<double>& coefficients,
                             const ContrastOptions& options) {
  TrialContrast result;
  if (auto problem = options.problem()) {
    result.summary = refused(*problem);
    return result;
  }
  const auto table = table_of(trial, factors, options.trial);
  if (!table) {
    result.summary = refused(table.error());
    return result;
  }
  if (auto problem = not_a_contrast(coefficients, table->means.size())) {
    result.summary = refused(*problem);
    return result;
  }
  const auto error = error_of(*table, weights_of(*table, coefficients));
  if (!error) {
    result.summary = no_residual();
    return result;
  }
  result.estimate = value_of(*table, coefficients);
  result.standard_error = error->standard_error;
  result.df = error->df;
  result.t = result.estimate / result.standard_error;
  result.p = 2 * t_upper(std::fabs(result.t), result.df);
  const double half = t_quantile((1 + options.confidence) / 2, result.df) * result.standard_error;
  result.interval = {result.estimate - half, result.estimate + half};
  result.summary = done_if_finite({result.estimate, result.t, result.p, half});
  return result;
}

} // namespace baize::stats
