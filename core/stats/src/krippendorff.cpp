#include "baize/stats/krippendorff.h"

#include "baize/stats/distributions.h"
#include "baize/stats/leave_out.h"
#include "checks.h"

#include <algorithm>
#include <map>

namespace baize::stats {
namespace {

using Cells = std::vector<std::vector<std::optional<double>>>;
using Item = std::map<double, double>; ///< how often each value was given

std::optional<units::Problem> cell_trouble(double value, AlphaMetric metric, std::size_t row,
                                           std::size_t column) {
  const bool below = metric == AlphaMetric::ratio && value < 0;
  if (std::isfinite(value) && !below) {
    return std::nullopt;
  }
  return units::Problem{below ? "below_zero" : "not_finite", "score", units::write_number(value),
                        below ? "0 or more on a ratio scale" : "a finite number",
                        "item " + std::to_string(row + 1) + ", observer " +
                            std::to_string(column + 1)};
}

std::optional<units::Problem> trouble(const Cells& ratings, AlphaMetric metric,
                                      const ConfidenceOptions& options) {
  if (const auto bad = options.problem()) {
    return bad;
  }
  std::size_t observers = 0;
  for (std::size_t i = 0; i < ratings.size(); ++i) {
    observers = std::max(observers, ratings[i].size());
    for (std::size_t j = 0; j < ratings[i].size(); ++j) {
      if (!ratings[i][j]) {
        continue;
      }
      if (const auto bad = cell_trouble(*ratings[i][j], metric, i, j)) {
        return bad;
      }
    }
  }
  return too_few("number of observers", observers, 2);
}

double count(const Item& item) {
  double sum = 0;
  for (const auto& [value, times] : item) {
    sum += times;
  }
  return sum;
}

std::vector<Item> pairable(const Cells& ratings) {
  std::vector<Item> items;
  for (const auto& row : ratings) {
    Item item;
    for (const auto& cell : row) {
      if (cell) {
        item[*cell] += 1;
      }
    }
    if (count(item) >= 2) {
      items.push_back(std::move(item));
    }
  }
  return items;
}

/// Differences by value and, for the ordinal metric, by how many values were given
/// up to each (its own half counted), so that a difference of ranks is a subtraction.
class Metric {
 public:
  Metric(AlphaMetric kind, const Item& given) : kind_(kind) {
    double below = 0;
    for (const auto& [value, times] : given) {
      rank_[value] = below + times / 2;
      below += times;
    }
  }
  double between(double a, double b) const {
    if (kind_ == AlphaMetric::nominal) {
      return a == b ? 0 : 1;
    }
    const double apart =
        kind_ == AlphaMetric::ordinal ? rank_.find(a)->second - rank_.find(b)->second : a - b;
    const double scaled = kind_ == AlphaMetric::ratio && a + b > 0 ? apart / (a + b) : apart;
    return scaled * scaled;
  }
  /// Summed over the ordered pairs of a bag of values.
  double over(const Item& bag) const {
    double sum = 0;
    for (auto a = bag.begin(); a != bag.end(); ++a) {
      for (auto b = std::next(a); b != bag.end(); ++b) {
        sum += 2 * a->second * b->second * between(a->first, b->first);
      }
    }
    return sum;
  }

 private:
  AlphaMetric kind_;
  Item rank_;
};

struct Disagreement {
  double values = 0;
  double observed = 0;
  double expected = 0;
};

Disagreement disagreement(const std::vector<Item>& items, AlphaMetric kind, std::size_t left_out) {
  Item given;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (i != left_out) {
      for (const auto& [value, times] : items[i]) {
        given[value] += times;
      }
    }
  }
  const Metric metric(kind, given);
  Disagreement found;
  found.values = count(given);
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (i != left_out) {
      found.observed += metric.over(items[i]) / (count(items[i]) - 1) / found.values;
    }
  }
  found.expected = metric.over(given) / (found.values * (found.values - 1));
  return found;
}

void add_error(Alpha& alpha, const std::vector<Item>& items, AlphaMetric kind, double confidence) {
  if (items.size() < 3) {
    return;
  }
  std::vector<double> without;
  const auto n = static_cast<double>(items.size());
  for (std::size_t i = 0; i < items.size(); ++i) {
    const Disagreement found = disagreement(items, kind, i);
    if (!(found.expected > 0)) {
      return;
    }
    without.push_back(1 - found.observed / found.expected);
  }
  alpha.se = leave_one_out_error(without);
  if (*alpha.se > rounding_of(1)) {
    const double half = t_quantile(1 - (1 - confidence) / 2, n - 1) * *alpha.se;
    alpha.interval = Interval{alpha.value - half, std::min(1.0, alpha.value + half)};
  }
}

} // namespace

Alpha krippendorff_alpha(const Cells& ratings, AlphaMetric metric,
                         const ConfidenceOptions& options) {
  Alpha alpha;
  if (const auto bad = trouble(ratings, metric, options)) {
    alpha.summary = refused(*bad);
    return alpha;
  }
  const auto items = pairable(ratings);
  alpha.items = items.size();
  if (const auto bad = too_few("number of items with two scores", items.size(), 1)) {
    alpha.summary = refused(*bad);
    return alpha;
  }
  const Disagreement found = disagreement(items, metric, items.size());
  alpha.values = static_cast<std::size_t>(found.values);
  if (!(found.expected > 0)) {
    alpha.summary = degenerate({"all_equal", "scores", "all the same",
                                "at least two different, since chance is judged by them", ""});
    return alpha;
  }
  alpha.observed = found.observed;
  alpha.expected = found.expected;
  alpha.value = 1 - found.observed / found.expected;
  add_error(alpha, items, metric, options.confidence);
  alpha.summary =
      done_if_finite({alpha.value, alpha.observed, alpha.expected, alpha.se.value_or(0)});
  return alpha;
}

} // namespace baize::stats
