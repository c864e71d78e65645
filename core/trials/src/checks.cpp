#include "baize/trials/checks.h"

#include "baize/stats/descriptive.h"
#include "baize/stats/distributions.h"
#include "baize/stats/one_way_anova.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace baize::trials {
namespace {

/// Means of the values by what `key` says of their plots, put back to each plot.
template <class Key>
std::vector<double> means_by(const Plan& plan, const std::vector<double>& values, Key key) {
  using K = decltype(key(plan.plots.front()));
  std::map<K, std::pair<double, int>> sums;
  for (std::size_t i = 0; i < values.size(); ++i) {
    auto& [sum, count] = sums[key(plan.plots[i])];
    sum += values[i];
    ++count;
  }
  std::vector<double> means;
  for (const Plot& plot : plan.plots) {
    const auto& [sum, count] = sums.at(key(plot));
    means.push_back(sum / count);
  }
  return means;
}

/// What is left once every effect of the layout is taken out: in a balanced layout
/// alternating sums of marginal means.
std::vector<double> residuals_of(const Plan& plan, const std::vector<double>& y) {
  const auto block = means_by(plan, y, [](const Plot& p) { return p.block; });
  const auto first = means_by(plan, y, [](const Plot& p) { return p.treatment; });
  const auto second = means_by(plan, y, [](const Plot& p) { return p.second; });
  const auto both =
      means_by(plan, y, [](const Plot& p) { return std::pair(p.treatment, p.second); });
  const auto whole =
      means_by(plan, y, [](const Plot& p) { return std::pair(p.block, p.treatment); });
  const auto across = means_by(plan, y, [](const Plot& p) { return std::pair(p.block, p.second); });
  const auto all = means_by(plan, y, [](const Plot&) { return 0; });
  std::vector<double> residuals(y.size());
  for (std::size_t i = 0; i < y.size(); ++i) {
    switch (plan.layout) {
    case Layout::completely_randomised:
      residuals[i] = y[i] - first[i];
      break;
    case Layout::randomised_blocks:
      residuals[i] = y[i] - block[i] - first[i] + all[i];
      break;
    case Layout::split_plot:
      residuals[i] = y[i] - whole[i] - both[i] + first[i];
      break;
    case Layout::strip_plot:
      residuals[i] =
          y[i] - whole[i] - across[i] - both[i] + block[i] + first[i] + second[i] - all[i];
      break;
    }
  }
  return residuals;
}

std::optional<double> spread_test(const Plan& plan, const std::vector<double>& residuals) {
  std::map<std::string, std::vector<double>> groups;
  for (std::size_t i = 0; i < residuals.size(); ++i) {
    groups[plan.plots[i].treatment].push_back(residuals[i]);
  }
  std::vector<std::vector<double>> distances;
  for (auto& [name, group] : groups) {
    const double middle = stats::quantile(group, 0.5).value;
    for (double& value : group) {
      value = std::fabs(value - middle);
    }
    distances.push_back(group);
  }
  const auto anova = stats::one_way_anova(distances);
  return anova.summary.usable ? std::optional(anova.p) : std::nullopt;
}

std::optional<double> anderson_darling(std::vector<double> values) {
  const auto description = stats::describe(values);
  constexpr std::size_t kFewest = 8;
  if (values.size() < kFewest || !description.sd || !(*description.sd > 0)) {
    return std::nullopt;
  }
  std::sort(values.begin(), values.end());
  const auto n = static_cast<double>(values.size());
  double sum = 0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    const double low = (values[i] - description.mean) / *description.sd;
    const double high = (values[values.size() - 1 - i] - description.mean) / *description.sd;
    sum += static_cast<double>(2 * i + 1) *
           (std::log(stats::normal_cdf(low)) + std::log(stats::normal_upper(high)));
  }
  const double statistic = -n - sum / n;
  return statistic * (1 + 0.75 / n + 2.25 / (n * n));
}

void find_outlier(const Plan& plan, int residual_df, Checks& checks) {
  const auto n = static_cast<double>(checks.residuals.size());
  double sum = 0;
  std::size_t furthest = 0;
  for (std::size_t i = 0; i < checks.residuals.size(); ++i) {
    sum += checks.residuals[i] * checks.residuals[i];
    if (std::fabs(checks.residuals[i]) > std::fabs(checks.residuals[furthest])) {
      furthest = i;
    }
  }
  // In a balanced layout every residual has the variance sigma^2 df / n.
  const double df = residual_df;
  const double squared = checks.residuals[furthest] * checks.residuals[furthest] * n / sum;
  if (residual_df < 2 || !(sum > 0) || !(squared < df)) {
    return;
  }
  const double t = std::sqrt(squared * (df - 1) / (df - squared));
  checks.outlier = plan.plots[furthest].number;
  checks.outlier_p = std::fmin(1, 2 * n * stats::t_upper(t, df - 1));
}

} // namespace

Checks check_assumptions(const Plan& plan, const std::vector<double>& values, int residual_df) {
  Checks checks;
  checks.residuals = residuals_of(plan, values);
  checks.spread_p = spread_test(plan, checks.residuals);
  checks.normality = anderson_darling(checks.residuals);
  checks.normal_enough = !checks.normality || *checks.normality <= kNormalityLimit;
  find_outlier(plan, residual_df, checks);
  return checks;
}

} // namespace baize::trials
