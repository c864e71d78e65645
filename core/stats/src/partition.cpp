#include "partition.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <utility>

namespace baize::stats::detail {
namespace {

/// Classes numbered in the order of their keys.
template <class Key> Partition numbered(const std::vector<Key>& keys) {
  std::map<Key, std::size_t> number;
  for (const Key& key : keys) {
    number.emplace(key, 0);
  }
  std::size_t next = 0;
  for (auto& [key, value] : number) {
    value = next++;
  }
  Partition result;
  result.size.assign(number.size(), 0);
  for (const Key& key : keys) {
    result.of.push_back(number.at(key));
    result.size[result.of.back()] += 1;
  }
  return result;
}

std::size_t root_of(std::vector<std::size_t>& parent, std::size_t item) {
  while (parent[item] != item) {
    parent[item] = parent[parent[item]];
    item = parent[item];
  }
  return item;
}

} // namespace

Partition partition(const std::vector<int>& level) {
  return numbered(level);
}

Partition crossed(const Partition& a, const Partition& b) {
  std::vector<std::pair<std::size_t, std::size_t>> keys;
  keys.reserve(a.of.size());
  for (std::size_t i = 0; i < a.of.size(); ++i) {
    keys.emplace_back(a.of[i], b.of[i]);
  }
  return numbered(keys);
}

Partition joined(const Partition& a, const Partition& b) {
  std::vector<std::size_t> parent(a.classes() + b.classes());
  std::iota(parent.begin(), parent.end(), std::size_t{0});
  for (std::size_t i = 0; i < a.of.size(); ++i) {
    parent[root_of(parent, a.of[i])] = root_of(parent, a.classes() + b.of[i]);
  }
  std::vector<std::size_t> keys;
  keys.reserve(a.of.size());
  for (const std::size_t one : a.of) {
    keys.push_back(root_of(parent, one));
  }
  return numbered(keys);
}

bool orthogonal(const Partition& a, const Partition& b) {
  const Partition both = crossed(a, b);
  const Partition either = joined(a, b);
  // Cells that never occur have to be missed as well: in each joined class there
  // must be as many cells as pairs of classes.
  std::vector<std::size_t> of_a(a.classes());
  std::vector<std::size_t> of_b(b.classes());
  std::vector<std::size_t> of_cell(both.classes());
  for (std::size_t i = 0; i < a.of.size(); ++i) {
    of_a[a.of[i]] = of_b[b.of[i]] = of_cell[both.of[i]] = either.of[i];
    const auto expected = a.size[a.of[i]] * b.size[b.of[i]];
    if (both.size[both.of[i]] * either.size[either.of[i]] != expected) {
      return false;
    }
  }
  for (std::size_t one = 0; one < either.classes(); ++one) {
    const auto in = [one](const auto& list) { return std::count(list.begin(), list.end(), one); };
    if (in(of_a)*in(of_b) != in(of_cell)) {
      return false;
    }
  }
  return true;
}

void average(const Partition& partition, Column& values) {
  std::vector<long double> mean(partition.classes(), 0);
  for (std::size_t i = 0; i < values.size(); ++i) {
    mean[partition.of[i]] += values[i];
  }
  for (std::size_t k = 0; k < mean.size(); ++k) {
    mean[k] /= partition.size[k];
  }
  for (std::size_t i = 0; i < values.size(); ++i) {
    values[i] = mean[partition.of[i]];
  }
}

void sweep(const Partition& partition, Column& values) {
  Column means = values;
  average(partition, means);
  for (std::size_t i = 0; i < values.size(); ++i) {
    values[i] -= means[i];
  }
}

} // namespace baize::stats::detail
