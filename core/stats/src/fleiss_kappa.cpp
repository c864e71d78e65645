#include "baize/stats/fleiss_kappa.h"

#include "baize/stats/distributions.h"
#include "checks.h"

#include <algorithm>
#include <numeric>

namespace baize::stats {
namespace {

using Counts = std::vector<std::vector<double>>;

double sum_of(const std::vector<double>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0);
}

std::optional<units::Problem> row_trouble(const std::vector<double>& row,
                                          const std::vector<double>& wanted) {
  if (const auto bad = lengths_differ("counts", row.size(), wanted.size())) {
    return bad;
  }
  if (const auto bad = not_finite("counts", row)) {
    return bad;
  }
  const auto below = std::find_if(row.begin(), row.end(), [](double c) { return c < 0; });
  if (below != row.end()) {
    return units::Problem{"below_zero", "counts", units::write_number(*below), "0 or more", {}};
  }
  if (sum_of(row) != sum_of(wanted)) {
    return units::Problem{"ratings_differ",
                          "number of ratings",
                          units::write_number(sum_of(row)),
                          "as many as for the first item, " + units::write_number(sum_of(wanted)),
                          {}};
  }
  return std::nullopt;
}

std::optional<units::Problem> trouble(const Counts& counts, const ConfidenceOptions& options) {
  if (const auto bad = options.problem()) {
    return bad;
  }
  if (const auto bad = too_few("number of items", counts.size(), 2)) {
    return bad;
  }
  if (const auto bad = too_few("number of categories", counts.front().size(), 2)) {
    return bad;
  }
  for (std::size_t i = 0; i < counts.size(); ++i) {
    if (auto bad = row_trouble(counts[i], counts.front())) {
      bad->place = "item " + std::to_string(i + 1) + (bad->place.empty() ? "" : ", " + bad->place);
      return bad;
    }
  }
  const double ratings = sum_of(counts.front());
  if (ratings < 2) {
    return units::Problem{
        "too_few", "number of ratings", units::write_number(ratings), "at least 2", {}};
  }
  return std::nullopt;
}

std::vector<double> shares(const Counts& counts, double all) {
  std::vector<double> share(counts.front().size(), 0);
  for (const auto& row : counts) {
    for (std::size_t j = 0; j < row.size(); ++j) {
      share[j] += row[j] / all;
    }
  }
  return share;
}

/// The share of the pairs of observers that agree on one item.
double agreement(const std::vector<double>& row, double m) {
  double pairs = 0;
  for (const double count : row) {
    pairs += count * (count - 1);
  }
  return pairs / (m * (m - 1));
}

void add_null_error(FleissKappa& of, const std::vector<double>& share) {
  double spread = 0;
  double lopsided = 0;
  for (const double p : share) {
    spread += p * (1 - p);
    lopsided += p * (1 - p) * (1 - 2 * p);
  }
  const double m = of.ratings;
  of.null_se = std::sqrt(2 * std::max(0.0, spread * spread - lopsided) /
                         (static_cast<double>(of.items) * m * (m - 1))) /
               spread;
}

void add_error(FleissKappa& of, const Counts& counts, const std::vector<double>& share,
               double confidence) {
  const double chance = 1 - of.expected;
  const auto n = static_cast<double>(of.items);
  double squares = 0;
  for (const auto& row : counts) {
    double expected = 0;
    for (std::size_t j = 0; j < row.size(); ++j) {
      expected += share[j] * row[j] / of.ratings;
    }
    const double one = (agreement(row, of.ratings) - of.expected) / chance -
                       2 * (1 - of.value) * (expected - of.expected) / chance;
    squares += (one - of.value) * (one - of.value);
  }
  of.se = std::sqrt(squares / (n * (n - 1)));
  if (of.se > rounding_of(1)) {
    const double half = t_quantile(1 - (1 - confidence) / 2, n - 1) * of.se;
    of.interval = Interval{std::max(-1.0, of.value - half), std::min(1.0, of.value + half)};
  }
}

} // namespace

FleissKappa fleiss_kappa(const Counts& counts, const ConfidenceOptions& options) {
  FleissKappa of;
  of.items = counts.size();
  if (const auto bad = trouble(counts, options)) {
    of.summary = refused(*bad);
    return of;
  }
  of.ratings = sum_of(counts.front());
  const auto n = static_cast<double>(of.items);
  const auto share = shares(counts, n * of.ratings);
  if (std::count_if(share.begin(), share.end(), [](double p) { return p > 0; }) < 2) {
    of.summary = degenerate({"all_equal", "ratings", "one and the same category throughout",
                             "at least two categories, since chance is judged by them", ""});
    return of;
  }
  of.observed = 0;
  for (const auto& row : counts) {
    of.observed += agreement(row, of.ratings) / n;
  }
  of.expected = std::inner_product(share.begin(), share.end(), share.begin(), 0.0);
  of.value = (of.observed - of.expected) / (1 - of.expected);
  add_null_error(of, share);
  add_error(of, counts, share, options.confidence);
  of.summary = done_if_finite({of.value, of.observed, of.expected, of.se, of.null_se});
  return of;
}

} // namespace baize::stats
