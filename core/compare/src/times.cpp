#include "times.h"

#include "baize/stats/distributions.h"

#include <cmath>

namespace baize::compare::detail {
namespace {

stats::CensoredTime time_in(const Look& look, Unit unit) {
  switch (unit) {
  case Unit::growth_days:
    return *look.growth_days;
  case Unit::days_if_good:
    return look.days_if_good.value_or(look.days);
  case Unit::days:
    break;
  }
  return look.days;
}

std::vector<stats::AftObservation> observations(const Table& table, Unit unit,
                                                const std::vector<Covariate>& columns) {
  std::vector<stats::AftObservation> out;
  for (std::size_t i = 0; i < table.looks.size(); ++i) {
    const Look& look = *table.looks[i];
    stats::AftObservation one{time_in(look, unit), {}};
    for (std::size_t m = 1; m < table.methods.size(); ++m) {
      one.covariates.push_back(table.method[i] == static_cast<int>(m) ? 1 : 0);
    }
    for (const Covariate& column : columns) {
      one.covariates.push_back(column.values[i]);
    }
    out.push_back(std::move(one));
  }
  return out;
}

/// A method's place among the coefficients; the first has none of its own.
double variance_between(const std::vector<std::vector<double>>& v, std::size_t a, std::size_t b) {
  const double own = (a == 0 ? 0 : v[a][a]) + (b == 0 ? 0 : v[b][b]);
  return own - (a == 0 || b == 0 ? 0 : 2 * v[a][b]);
}

} // namespace

Times fit_times(const Table& table, Unit unit, const std::vector<Covariate>& columns, int df,
                const CompareOptions& options) {
  Times out;
  out.df = df;
  if (df < 1) {
    out.summary =
        stats::refused({"too_few_works", "works", std::to_string(table.works),
                        "more than the methods, " + std::to_string(table.methods.size()), ""});
    return out;
  }
  out.fit = stats::fit_aft_frailty(observations(table, unit, columns), table.work,
                                   {{options.distribution, 200}, 21});
  out.summary = out.fit.fit.summary;
  if (!out.summary.usable) {
    return out;
  }
  out.reach = stats::t_quantile((1 + options.level) / 2, df);
  out.stretch = std::sqrt(static_cast<double>(table.works) / df);
  for (std::size_t m = 0; m < table.methods.size(); ++m) {
    std::vector<double> at(table.methods.size() - 1 + columns.size(), 0);
    if (m > 0) {
      at[m - 1] = 1;
    }
    const auto median = stats::aft_quantile(out.fit.fit, at, 0.5);
    if (!median) {
      out.summary = stats::degenerate({"not_determined", "median", table.methods[m],
                                       "a method whose median can be computed", ""});
      return out;
    }
    out.log_median.push_back(std::log(median->time));
    out.log_error.push_back(out.stretch * median->log_standard_error);
  }
  return out;
}

Figure median_of(const Times& times, std::size_t method) {
  const double far = times.reach * times.log_error[method];
  const double centre = times.log_median[method];
  return {std::exp(centre), std::exp(centre - far), std::exp(centre + far)};
}

double error_of_difference(const Times& times, std::size_t first, std::size_t second) {
  const double variance = variance_between(times.fit.fit.covariance, first, second);
  return times.stretch * std::sqrt(std::max(0.0, variance));
}

Figure difference_of(const Times& times, std::size_t first, std::size_t second) {
  const double d = times.log_median[second] - times.log_median[first];
  const double far = times.reach * error_of_difference(times, first, second);
  const double g = std::exp((times.log_median[first] + times.log_median[second]) / 2);
  return {2 * g * std::sinh(d / 2), 2 * g * std::sinh((d - far) / 2),
          2 * g * std::sinh((d + far) / 2)};
}

Figure ratio_of(const Times& times, std::size_t first, std::size_t second) {
  const double d = times.log_median[second] - times.log_median[first];
  const double far = times.reach * error_of_difference(times, first, second);
  return {std::exp(d), std::exp(d - far), std::exp(d + far)};
}

double p_of(const Times& times, std::size_t first, std::size_t second) {
  const double d = times.log_median[second] - times.log_median[first];
  const double error = error_of_difference(times, first, second);
  return error > 0 ? 2 * stats::t_upper(std::fabs(d) / error, times.df) : 1;
}

} // namespace baize::compare::detail
