#include "baize/consistency/rank.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace baize::consistency {
namespace {

std::vector<double> ranks(const std::vector<double>& values) {
  std::vector<std::size_t> order(values.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(),
            [&](std::size_t a, std::size_t b) { return values[a] < values[b]; });
  std::vector<double> ranked(values.size());
  for (std::size_t from = 0; from < order.size();) {
    std::size_t to = from;
    while (to < order.size() && values[order[to]] == values[order[from]]) {
      ++to;
    }
    const double rank = (static_cast<double>(from) + static_cast<double>(to) + 1) / 2;
    for (; from < to; ++from) {
      ranked[order[from]] = rank;
    }
  }
  return ranked;
}

} // namespace

std::optional<double> spearman(const std::vector<double>& first,
                               const std::vector<double>& second) {
  constexpr std::size_t kLeast = 3;
  if (first.size() < kLeast || first.size() != second.size()) {
    return std::nullopt;
  }
  const auto x = ranks(first);
  const auto y = ranks(second);
  const double middle = (static_cast<double>(x.size()) + 1) / 2; // the mean of any ranks
  double xx = 0;
  double yy = 0;
  double xy = 0;
  for (std::size_t i = 0; i < x.size(); ++i) {
    xx += (x[i] - middle) * (x[i] - middle);
    yy += (y[i] - middle) * (y[i] - middle);
    xy += (x[i] - middle) * (y[i] - middle);
  }
  return xx > 0 && yy > 0 ? std::optional(xy / std::sqrt(xx * yy)) : std::nullopt;
}

std::optional<RankCorrelation> rank_correlation(const std::vector<RankPair>& pairs,
                                                double confidence) {
  std::vector<std::size_t> groups;
  groups.reserve(pairs.size());
  for (const RankPair& pair : pairs) {
    groups.push_back(pair.group);
  }
  std::sort(groups.begin(), groups.end());
  groups.erase(std::unique(groups.begin(), groups.end()), groups.end());
  const auto without = [&](std::optional<std::size_t> left_out) {
    std::vector<double> first;
    std::vector<double> second;
    for (const RankPair& pair : pairs) {
      if (!left_out || pair.group != groups[*left_out]) {
        first.push_back(pair.first);
        second.push_back(pair.second);
      }
    }
    return spearman(first, second);
  };
  const auto estimate = observers::by_session(groups.size(), without, confidence, -1, 1);
  if (!estimate) {
    return std::nullopt;
  }
  return RankCorrelation{static_cast<int>(pairs.size()), static_cast<int>(groups.size()),
                         *estimate};
}

} // namespace baize::consistency
