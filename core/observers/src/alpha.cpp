#include "baize/observers/lean.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace baize::observers {
namespace {

/// The ordinal difference of two values is that of their middle ranks, so both
/// metrics are squares of plain differences. Only items with two values count.
using Items = std::vector<std::pair<std::size_t, std::vector<double>>>; ///< block, values

std::map<double, double> middle_ranks(const Items& items, std::optional<std::size_t> left_out) {
  std::map<double, double> ranks;
  for (const auto& [block, values] : items) {
    for (const double value : values) {
      ranks[value] += block == left_out ? 0 : 1;
    }
  }
  double before = 0;
  for (auto& [value, rank] : ranks) {
    const double times = rank;
    rank = before + times / 2;
    before += times;
  }
  return ranks;
}

/// 1 - observed / expected, by sums: the same as stats::krippendorff_alpha, which
/// leaves out every single item and would take too long here.
std::optional<double> alpha(const Items& items, bool ordinal, std::optional<std::size_t> left_out) {
  const auto ranks = ordinal ? middle_ranks(items, left_out) : std::map<double, double>{};
  double n = 0;
  double sum = 0;
  double squares = 0;
  double within = 0;
  for (const auto& [block, values] : items) {
    if (block == left_out) {
      continue;
    }
    const auto count = static_cast<double>(values.size());
    double own = 0;
    double own_squares = 0;
    for (const double value : values) {
      const double x = ordinal ? ranks.at(value) : value;
      own += x;
      own_squares += x * x;
    }
    n += count;
    sum += own;
    squares += own_squares;
    within += 2 * (count * own_squares - own * own) / (count - 1);
  }
  const double expected = 2 * (n * squares - sum * sum) / (n * (n - 1));
  return n > 1 && expected > 0 ? std::optional(1 - within / n / expected) : std::nullopt;
}

} // namespace

GroupAlpha group_alpha(const SharedTable& table, stats::AlphaMetric metric, double confidence) {
  GroupAlpha found;
  const bool ordinal = metric == stats::AlphaMetric::ordinal;
  constexpr std::size_t kMostBlocks = 50;
  const std::size_t sessions = table.sessions.size();
  const std::size_t blocks = std::min(sessions, kMostBlocks);
  Items items;
  for (const SharedItem& item : ordinal ? table.rolls : table.runs) {
    std::vector<double> values;
    for (const auto& score : item.scores) {
      if (score) {
        values.push_back(*score);
      }
    }
    items.emplace_back(item.session * blocks / sessions, std::move(values));
  }
  found.items = static_cast<int>(items.size());
  found.estimate = by_session(
      blocks, [&](std::optional<std::size_t> left_out) { return alpha(items, ordinal, left_out); },
      confidence, -1, 1);
  found.summary = found.estimate
                      ? stats::done()
                      : stats::degenerate({"all_equal",
                                           "scores",
                                           "none, or all the same",
                                           "at least two different, since chance is judged by them",
                                           {}});
  return found;
}

} // namespace baize::observers
