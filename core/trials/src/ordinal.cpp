#include "baize/trials/ordinal.h"

#include "baize/stats/distributions.h"
#include "baize/stats/ordinal.h"

#include <algorithm>
#include <cmath>

namespace baize::trials {
namespace {

void add_dummies(std::vector<double>& row, std::size_t level, std::size_t levels) {
  for (std::size_t k = 1; k < levels; ++k) {
    row.push_back(k == level ? 1 : 0);
  }
}

/// Covariates are columns, one number a row.
void add_row(std::vector<std::vector<double>>& columns, const std::vector<double>& row) {
  columns.resize(row.size());
  for (std::size_t k = 0; k < row.size(); ++k) {
    columns[k].push_back(row[k]);
  }
}

template <class T> std::size_t place(const std::vector<T>& all, const T& one) {
  return static_cast<std::size_t>(std::find(all.begin(), all.end(), one) - all.begin());
}

/// Halves of points: a plot's mean over its days.
std::optional<int> category_of(const Values& values, std::size_t plot) {
  double sum = 0;
  int days = 0;
  for (const auto& day : values.by_day) {
    sum += day[plot].value_or(0);
    days += day[plot] ? 1 : 0;
  }
  return days > 0 ? std::optional(static_cast<int>(std::lround(2 * sum / days))) : std::nullopt;
}

stats::OrdinalData data_of(const Plan& plan, const Values& values) {
  const auto names = treatments(plan);
  const auto numbers = plan.has_blocks() ? blocks(plan) : std::vector<int>{0};
  stats::OrdinalData data;
  for (std::size_t i = 0; i < plan.plots.size(); ++i) {
    if (const auto category = category_of(values, i)) {
      std::vector<double> row;
      add_dummies(row, place(names, plan.plots[i].treatment), names.size());
      add_dummies(row, place(numbers, plan.plots[i].block), numbers.size());
      data.category.push_back(*category);
      add_row(data.covariates, row);
    }
  }
  return data;
}

/// Treatment k's log odds are coefficient k - 1; the first treatment's are 0.
void add_pairs(const stats::OrdinalFit& fit, const std::vector<std::string>& names,
               double confidence, Ordinal& result) {
  const std::size_t first = fit.thresholds.size();
  const auto value = [&](std::size_t k) { return k == 0 ? 0 : fit.coefficients[k - 1].value; };
  const auto shared = [&](std::size_t a, std::size_t b) {
    return a == 0 || b == 0 ? 0 : fit.covariance[first + a - 1][first + b - 1];
  };
  const double t = stats::t_quantile(0.5 + confidence / 2, result.df);
  for (std::size_t a = 0; a < names.size(); ++a) {
    for (std::size_t b = a + 1; b < names.size(); ++b) {
      const double log_odds = value(a) - value(b);
      const double error = std::sqrt(shared(a, a) + shared(b, b) - 2 * shared(a, b));
      result.pairs.push_back({names[a],
                              names[b],
                              std::exp(log_odds),
                              {std::exp(log_odds - t * error), std::exp(log_odds + t * error)},
                              2 * stats::t_upper(std::fabs(log_odds) / error, result.df)});
    }
  }
}

bool finite(const Ordinal& result) {
  return std::all_of(result.pairs.begin(), result.pairs.end(), [](const OddsRatio& one) {
    return std::isfinite(one.interval.low) && std::isfinite(one.interval.high) &&
           std::isfinite(one.p);
  });
}

std::optional<units::Problem> trouble(const Plan& plan, const Values& values) {
  if (values.quantity != "score") {
    return units::Problem{"not_scores", "quantity", values.quantity, "score, to be taken as ranks",
                          ""};
  }
  if (plan.has_second()) {
    return units::Problem{"one_treatment_only", "layout", std::string(word(plan.layout)),
                          "one with a single treatment, to be taken as ranks", ""};
  }
  return std::nullopt;
}

} // namespace

Ordinal analyse_ordinal(const Plan& plan, const Values& values, double confidence) {
  Ordinal result;
  if (const auto problem = trouble(plan, values)) {
    result.summary = stats::refused(*problem);
    return result;
  }
  const auto names = treatments(plan);
  const int blocks_taken = plan.has_blocks() ? static_cast<int>(blocks(plan).size()) - 1 : 0;
  const int df = static_cast<int>(plan.plots.size() - names.size()) - blocks_taken;
  if (df < 1) {
    result.summary = stats::refused({"too_few", "plots", std::to_string(plan.plots.size()),
                                     "more than treatments and blocks together", ""});
    return result;
  }
  result.df = df;
  const stats::OrdinalFit fit = stats::fit_ordinal(data_of(plan, values));
  result.summary = fit.summary;
  if (!result.summary.usable) {
    return result;
  }
  result.plots = static_cast<int>(fit.observations);
  add_pairs(fit, names, confidence, result);
  if (!finite(result)) {
    result.pairs.clear();
    result.summary = stats::degenerate({"separated", "scores", "",
                                        "such that no treatment has all its scores above all of "
                                        "another's",
                                        ""});
  }
  return result;
}

} // namespace baize::trials
