#include "baize/compare/comparison.h"

#include "baize/units/number.h"
#include "covariates.h"
#include "evidence.h"
#include "means.h"
#include "needed.h"
#include "times.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace baize::compare {
namespace {

using detail::Table;
using detail::Times;
using detail::Unit;
using Looks = std::vector<const Look*>;

/// Always in the same order, whatever the order of the records.
Looks ordered(const std::vector<Look>& looks) {
  Looks out;
  for (const Look& look : looks) {
    out.push_back(&look);
  }
  std::sort(out.begin(), out.end(), [](const Look* a, const Look* b) {
    return std::tie(a->day, a->club, a->green, a->half, a->method) <
           std::tie(b->day, b->club, b->green, b->half, b->method);
  });
  return out;
}

MethodFigures counts_of(const Looks& looks, const std::string& method) {
  MethodFigures out;
  out.method = method;
  std::set<std::pair<std::string, units::Day>> works;
  std::vector<stats::CensoredTime> times;
  bool below = false;
  double growth = 0;
  int known = 0;
  for (const Look* look : looks) {
    if (look->method != method) {
      continue;
    }
    ++out.looks;
    works.emplace(look->club, look->day);
    times.push_back(look->days);
    out.censored += look->days.right_censored() ? 1 : 0;
    out.missed += look->days_if_good ? 1 : 0;
    out.losses_open += look->score_days_ended ? 0 : 1;
    below = below || look->days.left > 0;
    growth += look->growth.value_or(0);
    known += look->growth ? 1 : 0;
  }
  out.works = static_cast<int>(works.size());
  out.no_median = out.censored == out.looks ? NoMedian::never_back
                  : below                   ? NoMedian::none
                                            : NoMedian::never_below;
  if (known > 0) {
    out.growth = growth / known;
  }
  out.curve = stats::turnbull(times);
  return out;
}

/// The looks of methods with medians, and where asked with growth-days.
Table table_of(const Looks& looks, const std::vector<MethodFigures>& methods, Unit unit) {
  Table table;
  std::map<std::string, int> place;
  for (const MethodFigures& one : methods) {
    if (one.no_median == NoMedian::none) {
      place.emplace(one.method, static_cast<int>(table.methods.size()));
      table.methods.push_back(one.method);
    }
  }
  for (const Look* look : looks) {
    const auto found = place.find(look->method);
    if (found != place.end() && (unit != Unit::growth_days || look->growth_days)) {
      table.looks.push_back(look);
      table.method.push_back(found->second);
    }
  }
  table.work = detail::number_works(table.looks, table.works);
  return table;
}

std::optional<std::size_t> place_of(const Table& table, const std::string& method) {
  const auto found = std::find(table.methods.begin(), table.methods.end(), method);
  if (found == table.methods.end()) {
    return std::nullopt;
  }
  return static_cast<std::size_t>(found - table.methods.begin());
}

void put_medians(Comparison& out, const Table& table, const Times& times,
                 std::optional<Figure> MethodFigures::* member) {
  for (MethodFigures& one : out.methods) {
    if (const auto place = place_of(table, one.method)) {
      one.*member = detail::median_of(times, *place);
    }
  }
}

void try_distributions(Comparison& out, const Table& table, const detail::Covariates& columns,
                       const CompareOptions& options) {
  for (const auto distribution :
       {stats::AftDistribution::log_logistic, stats::AftDistribution::log_normal,
        stats::AftDistribution::weibull}) {
    CompareOptions one = options;
    one.distribution = distribution;
    const Times times = detail::fit_times(table, Unit::days, columns.used, columns.df, one);
    if (times.summary.usable) {
      out.tried.push_back({distribution, times.fit.fit.log_likelihood});
    }
  }
}

/// Days: the regression with its covariates.
Times compare_days(Comparison& out, const Table& table, const CompareOptions& options) {
  Times times;
  if (table.methods.size() < 2) {
    times.summary =
        stats::refused({"too_few_medians", "methods", std::to_string(table.methods.size()),
                        "at least 2 of which some greens were seen below and some back", ""});
    return times;
  }
  const detail::Covariates columns = detail::covariates(table);
  times = detail::fit_times(table, Unit::days, columns.used, columns.df, options);
  out.adjustments = columns.all;
  out.df = times.df;
  if (!times.summary.usable) {
    return times;
  }
  std::size_t place = table.methods.size();
  for (Adjustment& one : out.adjustments) {
    if (one.used) {
      one.effect = times.fit.fit.coefficients[place++];
    }
    if (one.used && one.name == "growth") {
      one.reference = std::exp(*one.reference);
    }
  }
  out.work_sd = times.fit.cluster_sd;
  out.look_scale = times.fit.fit.scale;
  put_medians(out, table, times, &MethodFigures::days);
  if (std::any_of(table.looks.begin(), table.looks.end(),
                  [](const Look* look) { return look->days_if_good.has_value(); })) {
    const Times good =
        detail::fit_times(table, Unit::days_if_good, columns.used, columns.df, options);
    if (good.summary.usable) {
      put_medians(out, table, good, &MethodFigures::days_if_good);
    }
  }
  try_distributions(out, table, columns, options);
  return times;
}

/// Growth-days: no covariates, only the looks that have them.
Times compare_growth_days(Comparison& out, const Table& days, const Table& table,
                          const CompareOptions& options) {
  Times times;
  if (2 * table.looks.size() < days.looks.size()) {
    out.no_growth_days = "The weather is missing for more than half of the greens looked at.";
    return times;
  }
  times = detail::fit_times(table, Unit::growth_days, {},
                            table.works - static_cast<int>(table.methods.size()), options);
  if (!times.summary.usable) {
    out.no_growth_days = times.summary.message;
    return times;
  }
  put_medians(out, table, times, &MethodFigures::growth_days);
  return times;
}

void put_days(PairFigures& pair, const Times& times, const Table& table, int works_first,
              int works_second, const CompareOptions& options) {
  const auto a = place_of(table, pair.first);
  const auto b = place_of(table, pair.second);
  if (!times.summary.usable || !a || !b) {
    return;
  }
  pair.days = detail::difference_of(times, *a, *b);
  pair.ratio = detail::ratio_of(times, *a, *b);
  pair.p = detail::p_of(times, *a, *b);
  // The spread of works borrowed from the others is no evidence about a single one.
  pair.told_apart =
      pair.evidence != Evidence::one_work && (*pair.days->low > 0 || *pair.days->high < 0);
  const double error = detail::error_of_difference(times, *a, *b);
  const double per_work = error * error / (1.0 / works_first + 1.0 / works_second);
  const double median = std::exp((times.log_median[*a] + times.log_median[*b]) / 2);
  pair.works_needed = detail::works_needed(per_work, median, options.days_wanted);
}

void sort_methods(std::vector<MethodFigures>& methods) {
  std::sort(methods.begin(), methods.end(), [](const MethodFigures& a, const MethodFigures& b) {
    if (a.days.has_value() != b.days.has_value()) {
      return a.days.has_value();
    }
    if (a.days && a.days->value != b.days->value) {
      return a.days->value < b.days->value;
    }
    return a.method < b.method;
  });
}

} // namespace

std::optional<units::Problem> CompareOptions::problem() const {
  if (!(level > 0.5 && level < 1)) {
    return units::Problem{"option_out_of_range", "level", units::write_number(level),
                          "above 0.5 and below 1", "the options"};
  }
  if (!(days_wanted > 0 && std::isfinite(days_wanted))) {
    return units::Problem{"option_out_of_range", "days_wanted", units::write_number(days_wanted),
                          "a number of days above 0", "the options"};
  }
  return std::nullopt;
}

Comparison compare(const std::vector<Look>& looks, const CompareOptions& options) {
  Comparison out;
  out.distribution = options.distribution;
  if (auto problem = options.problem()) {
    out.summary = stats::refused(*problem);
    return out;
  }
  const Looks all = ordered(looks);
  std::set<std::string> names;
  for (const Look* look : all) {
    names.insert(look->method);
  }
  const std::vector<int> work = detail::number_works(all, out.works);
  out.looks = static_cast<int>(all.size());
  const detail::WorkMeans depth(all, work, &Look::depth, options.level);
  const detail::WorkMeans area(all, work, &Look::score_days, options.level);
  for (const std::string& name : names) {
    out.methods.push_back(counts_of(all, name));
    out.methods.back().depth = depth.of(name);
    out.methods.back().score_days = area.of(name);
  }
  if (names.size() < 2) {
    out.summary = stats::refused(
        {"one_method", "methods", std::to_string(names.size()), "at least 2, to be compared", ""});
    return out;
  }
  const Table days_table = table_of(all, out.methods, Unit::days);
  const Table growth_table = table_of(all, out.methods, Unit::growth_days);
  const Times days = compare_days(out, days_table, options);
  out.summary = days.summary;
  Times growth;
  if (days.summary.usable) {
    growth = compare_growth_days(out, days_table, growth_table, options);
  }
  sort_methods(out.methods);
  for (std::size_t i = 0; i < out.methods.size(); ++i) {
    for (std::size_t k = i + 1; k < out.methods.size(); ++k) {
      const MethodFigures& a = out.methods[i];
      const MethodFigures& b = out.methods[k];
      PairFigures pair;
      pair.first = a.method;
      pair.second = b.method;
      const detail::Design design = detail::design_of(all, a.method, b.method);
      pair.evidence = design.evidence;
      pair.shared_days = design.shared_days;
      put_days(pair, days, days_table, a.works, b.works, options);
      if (a.growth_days && b.growth_days) {
        pair.growth_days = detail::difference_of(growth, *place_of(growth_table, a.method),
                                                 *place_of(growth_table, b.method));
      }
      pair.depth = depth.between(a.method, b.method);
      pair.score_days = area.between(a.method, b.method);
      out.pairs.push_back(std::move(pair));
    }
  }
  return out;
}

} // namespace baize::compare
