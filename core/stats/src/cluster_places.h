#pragma once

#include "baize/units/problem.h"
#include "checks.h"

#include <map>
#include <vector>

namespace baize::stats::detail {

/// The observations of one cluster.
struct ClusterPlaces {
  int cluster = 0;
  std::vector<std::size_t> places;
};

/// In order of the clusters' numbers. Refuses "lengths_differ".
inline units::Result<std::vector<ClusterPlaces>> cluster_places(const std::vector<int>& clusters,
                                                                std::size_t observations) {
  if (auto problem = lengths_differ("clusters", clusters.size(), observations)) {
    return units::Refusal(*problem);
  }
  std::map<int, std::vector<std::size_t>> by_number;
  for (std::size_t i = 0; i < clusters.size(); ++i) {
    by_number[clusters[i]].push_back(i);
  }
  std::vector<ClusterPlaces> all;
  all.reserve(by_number.size());
  for (auto& [number, places] : by_number) {
    all.push_back({number, std::move(places)});
  }
  return all;
}

} // namespace baize::stats::detail
