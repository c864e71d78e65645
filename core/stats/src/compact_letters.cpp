#include "baize/stats/mean_comparisons.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace baize::stats {
namespace {

using Group = std::vector<bool>; ///< by rank of the mean, the greatest first

constexpr std::size_t kLetters = 52;
/// Groups may be more on the way than in the end.
constexpr std::size_t kMostGroups = 2000;

bool within(const Group& inner, const Group& outer) {
  for (std::size_t i = 0; i < inner.size(); ++i) {
    if (inner[i] && !outer[i]) {
      return false;
    }
  }
  return true;
}

void absorb(std::vector<Group>& groups) {
  for (std::size_t i = 0; i < groups.size(); ++i) {
    for (std::size_t k = groups.size(); k-- > i + 1;) {
      if (within(groups[k], groups[i])) {
        groups.erase(groups.begin() + static_cast<std::ptrdiff_t>(k));
      } else if (within(groups[i], groups[k])) {
        groups[i] = groups[k];
        groups.erase(groups.begin() + static_cast<std::ptrdiff_t>(k));
        k = groups.size();
      }
    }
  }
}

/// Every group that holds both is split in one without each.
void insert(std::size_t a, std::size_t b, std::vector<Group>& groups) {
  const std::size_t before = groups.size();
  for (std::size_t i = 0; i < before; ++i) {
    if (groups[i][a] && groups[i][b]) {
      groups.push_back(groups[i]);
      groups[i][a] = false;
      groups.back()[b] = false;
    }
  }
  absorb(groups);
}

char letter(std::size_t number) {
  return static_cast<char>(number < 26 ? 'a' + number : 'A' + (number - 26));
}

} // namespace

std::vector<std::string>
compact_letters(const std::vector<double>& means,
                const std::vector<std::pair<std::size_t, std::size_t>>& apart) {
  const std::size_t size = means.size();
  std::vector<std::size_t> order(size);
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return means[a] > means[b]; });
  std::vector<std::size_t> rank(size);
  for (std::size_t i = 0; i < size; ++i) {
    rank[order[i]] = i;
  }
  std::vector<Group> groups{Group(size, true)};
  for (const auto& [a, b] : apart) {
    if (a >= size || b >= size || a == b || groups.size() > kMostGroups) {
      return {};
    }
    insert(rank[a], rank[b], groups);
  }
  if (groups.size() > kLetters) {
    return {};
  }
  std::sort(groups.begin(), groups.end(), std::greater<>());
  std::vector<std::string> letters(size);
  for (std::size_t g = 0; g < groups.size(); ++g) {
    for (std::size_t i = 0; i < size; ++i) {
      if (groups[g][i]) {
        letters[order[i]] += letter(g);
      }
    }
  }
  return letters;
}

} // namespace baize::stats
