#include "baize/consistency/nested.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace baize::consistency {
namespace {

/// A group: how many values, their sum, and who it lies in.
struct Node {
  double n = 0;
  double sum = 0;
  std::size_t parent = 0;
};

/// Level 0 is the whole, the last level the values themselves.
using Levels = std::vector<std::vector<Node>>;

Levels tree(const std::vector<NestedValue>& values, std::size_t depth) {
  Levels levels(depth + 1);
  levels[0].emplace_back();
  std::vector<std::map<std::pair<std::size_t, std::string>, std::size_t>> places(depth);
  for (const NestedValue& one : values) {
    std::size_t at = 0;
    levels[0][0].n += 1;
    levels[0][0].sum += one.value;
    for (std::size_t l = 1; l < depth; ++l) {
      const auto [found, fresh] =
          places[l].emplace(std::pair(at, one.path[l - 1]), levels[l].size());
      if (fresh) {
        levels[l].push_back({0, 0, at});
      }
      at = found->second;
      levels[l][at].n += 1;
      levels[l][at].sum += one.value;
    }
    levels[depth].push_back({1, one.value, at});
  }
  return levels;
}

/// Sum over nodes of `inner` of n^2 / n of the node of `outer` that holds it.
double coefficient(const Levels& levels, std::size_t outer, std::size_t inner) {
  double total = 0;
  for (const Node& node : levels[inner]) {
    std::size_t at = static_cast<std::size_t>(&node - levels[inner].data());
    for (std::size_t l = inner; l > outer; --l) {
      at = levels[l][at].parent;
    }
    total += node.n * node.n / levels[outer][at].n;
  }
  return total;
}

/// Sum of squares of the level's means about those of the level outside it.
double squares(const Levels& levels, std::size_t level) {
  double total = 0;
  for (const Node& node : levels[level]) {
    const Node& outside = levels[level - 1][node.parent];
    const double gap = node.sum / node.n - outside.sum / outside.n;
    total += node.n * gap * gap;
  }
  return total;
}

std::optional<units::Problem> trouble(const std::vector<NestedValue>& values, std::size_t depth) {
  for (const NestedValue& one : values) {
    if (one.path.size() + 1 != depth) {
      return units::Problem{"lengths_differ",
                            "path",
                            std::to_string(one.path.size()) + " names",
                            std::to_string(depth - 1) + ", one for each level of groups",
                            {}};
    }
    if (!std::isfinite(one.value)) {
      return units::Problem{"not_finite", "value", "not a finite number", "a finite number", {}};
    }
  }
  return std::nullopt;
}

/// Components from the innermost outwards; raw, so that one below 0 bends no other.
void solve(Nested& found, const Levels& levels) {
  const std::size_t depth = found.levels.size();
  std::vector<double> raw(depth + 1);
  for (std::size_t l = depth; l >= 1; --l) {
    const NestedLevel& level = found.levels[l - 1];
    double rest = level.ms;
    for (std::size_t inner = l + 1; inner <= depth; ++inner) {
      rest -= raw[inner] * (coefficient(levels, l, inner) - coefficient(levels, l - 1, inner)) /
              level.df;
    }
    const double own = (coefficient(levels, l, l) - coefficient(levels, l - 1, l)) / level.df;
    raw[l] = rest / own;
  }
  double sum = 0;
  for (std::size_t l = 1; l <= depth; ++l) {
    found.levels[l - 1].variance = std::max(0.0, raw[l]);
    sum += found.levels[l - 1].variance;
  }
  for (NestedLevel& level : found.levels) {
    level.share = sum > 0 ? level.variance / sum : 0;
  }
}

} // namespace

Nested nested_components(const std::vector<NestedValue>& values,
                         const std::vector<std::string>& names) {
  Nested found;
  const std::size_t depth = names.size();
  found.values = static_cast<int>(values.size());
  if (const auto bad = trouble(values, depth)) {
    found.summary = stats::refused(*bad);
    return found;
  }
  const Levels levels = tree(values, depth);
  for (std::size_t l = 1; l <= depth; ++l) {
    NestedLevel level;
    level.name = names[l - 1];
    level.groups = static_cast<int>(levels[l].size());
    level.df = level.groups - static_cast<int>(levels[l - 1].size());
    if (values.empty() || level.df < 1) {
      found.levels.clear();
      found.summary = stats::refused({"too_few",
                                      names[l - 1],
                                      std::to_string(levels[l].size()),
                                      "repeated in some group",
                                      {}});
      return found;
    }
    level.ms = squares(levels, l) / level.df;
    found.levels.push_back(level);
  }
  found.mean = levels[0][0].sum / levels[0][0].n;
  solve(found, levels);
  const bool none = std::all_of(found.levels.begin(), found.levels.end(),
                                [](const NestedLevel& level) { return level.ms <= 0; });
  found.summary = none ? stats::degenerate({"all_equal",
                                            "values",
                                            "all the same",
                                            "not all the same, since nothing can be shared out",
                                            {}})
                       : stats::done();
  return found;
}

} // namespace baize::consistency
