#include "baize/stats/icc.h"

#include "baize/stats/distributions.h"
#include "checks.h"

#include <algorithm>

namespace baize::stats {
namespace {

std::optional<units::Problem> trouble(const Ratings& ratings, const ConfidenceOptions& options) {
  if (const auto bad = options.problem()) {
    return bad;
  }
  if (const auto bad = too_few("number of items", ratings.size(), 2)) {
    return bad;
  }
  if (const auto bad = too_few("number of observers", ratings.front().size(), 2)) {
    return bad;
  }
  for (std::size_t i = 0; i < ratings.size(); ++i) {
    auto bad = lengths_differ("scores", ratings[i].size(), ratings.front().size());
    if (!bad) {
      bad = not_finite("score", ratings[i]);
    }
    if (bad) {
      bad->place = "item " + std::to_string(i + 1) + (bad->place.empty() ? "" : ", " + bad->place);
      return bad;
    }
  }
  return std::nullopt;
}

struct Squares {
  double items = 0;
  double observers = 0;
  double residual = 0;
};

Squares squares_of(const Ratings& ratings) {
  const std::size_t n = ratings.size();
  const std::size_t k = ratings.front().size();
  std::vector<double> item(n, 0);
  std::vector<double> observer(k, 0);
  // Taken from the first score, so that a large common level costs no digits.
  const double origin = ratings.front().front();
  double mean = 0;
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < k; ++j) {
      const double score = ratings[i][j] - origin;
      item[i] += score / static_cast<double>(k);
      observer[j] += score / static_cast<double>(n);
    }
    mean += item[i] / static_cast<double>(n);
  }
  Squares sum;
  for (const double one : item) {
    sum.items += static_cast<double>(k) * (one - mean) * (one - mean);
  }
  for (const double one : observer) {
    sum.observers += static_cast<double>(n) * (one - mean) * (one - mean);
  }
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < k; ++j) {
      const double left = ratings[i][j] - origin - item[i] - observer[j] + mean;
      sum.residual += left * left;
    }
  }
  return sum;
}

/// The forms (1) and (3), which differ only in their F.
void from_f(double f, double df1, double df2, double k, double p, IccForm& single, IccForm& mean) {
  const double low = f / f_quantile(p, df1, df2);
  const double high = f * f_quantile(p, df2, df1);
  single.value = (f - 1) / (f + k - 1);
  single.interval = {(low - 1) / (low + k - 1), (high - 1) / (high + k - 1)};
  mean.value = 1 - 1 / f;
  mean.interval = {1 - 1 / low, 1 - 1 / high};
}

double random_single_value(const Icc& of, double n, double k) {
  return (of.between_items - of.residual) /
         (of.between_items + (k - 1) * of.residual + k * (of.between_observers - of.residual) / n);
}

void random_forms(Icc& of, double n, double k, double p) {
  const double bms = of.between_items;
  const double jms = of.between_observers;
  const double ems = of.residual;
  const double rho = of.random_single.value;
  const double fj = jms / ems;
  const double rest = n * (1 + (k - 1) * rho) - k * rho;
  const double top = k * rho * fj + rest;
  const double df =
      (k - 1) * (n - 1) * top * top / ((n - 1) * k * k * rho * rho * fj * fj + rest * rest);
  const double f_low = f_quantile(p, n - 1, df);
  const double f_high = f_quantile(p, df, n - 1);
  const double observers = k * jms + (k * n - k - n) * ems;
  of.random_single.interval = {n * (bms - f_low * ems) / (f_low * observers + n * bms),
                               n * (f_high * bms - ems) / (observers + n * f_high * bms)};
  // Spearman and Brown, from one observer to the mean of k, has a pole where
  // agreement is -1 / (k - 1).
  const double part = bms + (jms - ems) / n;
  const double low = of.random_single.interval.low;
  const double high = of.random_single.interval.high;
  if (part > 1e-12 * (bms + ems) && 1 + (k - 1) * low > 1e-12) {
    of.random_mean = IccForm{(bms - ems) / part,
                             {k * low / (1 + (k - 1) * low), k * high / (1 + (k - 1) * high)}};
  }
}

Summary no_spread(const char* field, const char* value, const char* rule) {
  return degenerate({"all_equal", field, value, rule, ""});
}

Summary finite(const Icc& of) {
  Summary summary = done();
  for (const IccForm& form : {of.one_way_single, of.random_single, of.fixed_single, of.one_way_mean,
                              of.fixed_mean, of.random_mean.value_or(of.random_single)}) {
    if (summary.usable) {
      summary = done_if_finite({form.value, form.interval.low, form.interval.high});
    }
  }
  return summary;
}

} // namespace

Icc intraclass_correlation(const Ratings& ratings, const ConfidenceOptions& options) {
  Icc of;
  of.items = ratings.size();
  of.observers = ratings.empty() ? 0 : ratings.front().size();
  if (const auto bad = trouble(ratings, options)) {
    of.summary = refused(*bad);
    return of;
  }
  const auto n = static_cast<double>(of.items);
  const auto k = static_cast<double>(of.observers);
  const Squares sum = squares_of(ratings);
  of.between_items = sum.items / (n - 1);
  of.between_observers = sum.observers / (k - 1);
  of.residual = sum.residual / ((n - 1) * (k - 1));
  of.within_items = (sum.observers + sum.residual) / (n * (k - 1));
  of.summary = done_if_finite({sum.items, sum.observers, sum.residual});
  if (!of.summary.usable) {
    return of;
  }
  double largest = 0;
  for (const auto& row : ratings) {
    largest = std::max(largest, largest_of(row));
  }
  const double nothing = rounding_of(largest) * rounding_of(largest);
  if (of.between_items <= nothing) {
    of.summary = no_spread("item means", "all the same",
                           "different, since agreement is measured against their spread");
    return of;
  }
  of.random_single.value = random_single_value(of, n, k);
  const double p = 1 - (1 - options.confidence) / 2;
  if (of.residual <= nothing) {
    of.one_way_single.value =
        (of.between_items - of.within_items) / (of.between_items + (k - 1) * of.within_items);
    of.fixed_single.value = 1;
    of.summary = no_spread("differences between observers", "the same for every item",
                           "varied, since intervals are drawn from their scatter");
    return of;
  }
  from_f(of.between_items / of.within_items, n - 1, n * (k - 1), k, p, of.one_way_single,
         of.one_way_mean);
  from_f(of.between_items / of.residual, n - 1, (n - 1) * (k - 1), k, p, of.fixed_single,
         of.fixed_mean);
  random_forms(of, n, k, p);
  of.summary = finite(of);
  return of;
}

} // namespace baize::stats
