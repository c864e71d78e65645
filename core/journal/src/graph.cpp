#include "graph.h"

#include <algorithm>
#include <numeric>

namespace baize::journal {

Graph::Graph(const std::vector<const Entry*>& entries)
    : entries_(entries), over_(entries.size()), circle_(entries.size(), entries.size()) {
  for (std::size_t i = 0; i < entries.size(); ++i) {
    for (const std::string& id : entries[i]->over) {
      const auto at = std::lower_bound(
          entries.begin(), entries.end(), id,
          [](const Entry* entry, const std::string& wanted) { return entry->id < wanted; });
      if (at != entries.end() && (*at)->id == id) {
        over_[i].push_back(static_cast<std::size_t>(at - entries.begin()));
      } else {
        missing_.push_back(id);
      }
    }
  }
  std::sort(missing_.begin(), missing_.end());
  missing_.erase(std::unique(missing_.begin(), missing_.end()), missing_.end());
  find_circles();
  members_.resize(over_.size());
  for (std::size_t i = 0; i < circle_.size(); ++i) {
    members_[circle_[i]].push_back(i);
  }
}

/// Tarjan's search for strongly connected components (SIAM Journal on Computing
/// 1, 1972), without recursion: a thing of a thousand corrections is a chain.
struct Graph::Walk {
  struct Step {
    std::size_t at = 0;
    std::size_t next = 0;
  };
  explicit Walk(std::size_t n) : number(n, 0), low(n, 0), open(n, false) {}
  std::vector<std::size_t> number; ///< in the order found, from 1; 0: not yet
  std::vector<std::size_t> low;
  std::vector<bool> open;
  std::vector<std::size_t> waiting;
  std::vector<Step> path;
  std::size_t count = 0;

  void enter(std::size_t at) {
    number[at] = low[at] = ++count;
    open[at] = true;
    waiting.push_back(at);
    path.push_back({at, 0});
  }
  /// Leaves the last step; its circle is closed where it was the first of it.
  void leave(std::vector<std::size_t>& circle) {
    const std::size_t at = path.back().at;
    path.pop_back();
    if (!path.empty()) {
      low[path.back().at] = std::min(low[path.back().at], low[at]);
    }
    if (low[at] != number[at]) {
      return;
    }
    bool last = false;
    while (!last) {
      const std::size_t other = waiting.back();
      waiting.pop_back();
      open[other] = false;
      circle[other] = at;
      last = other == at;
    }
  }
};

void Graph::find_circles() {
  Walk walk(over_.size());
  for (std::size_t start = 0; start < over_.size(); ++start) {
    if (walk.number[start] == 0) {
      walk.enter(start);
    }
    while (!walk.path.empty()) {
      auto& [at, next] = walk.path.back();
      if (next == over_[at].size()) {
        walk.leave(circle_);
        continue;
      }
      const std::size_t to = over_[at][next++];
      if (walk.number[to] == 0) {
        walk.enter(to);
      } else if (walk.open[to]) {
        walk.low[at] = std::min(walk.low[at], walk.number[to]);
      }
    }
  }
}

std::vector<std::size_t> Graph::standing(const std::vector<std::size_t>& among) const {
  if (among.size() == 1) {
    return among;
  }
  // Everything that lies below any of them, outside its own circle.
  std::vector<bool> below(over_.size(), false);
  std::vector<bool> walked(over_.size(), false);
  std::vector<std::size_t> todo;
  todo.reserve(among.size());
  for (const std::size_t one : among) {
    todo.push_back(circle_[one]);
  }
  while (!todo.empty()) {
    const std::size_t circle = todo.back();
    todo.pop_back();
    if (walked[circle]) {
      continue;
    }
    walked[circle] = true;
    for (const std::size_t member : members_[circle]) {
      for (const std::size_t to : over_[member]) {
        if (circle_[to] != circle) {
          below[circle_[to]] = true;
          todo.push_back(circle_[to]);
        }
      }
    }
  }
  std::vector<std::size_t> kept;
  std::copy_if(among.begin(), among.end(), std::back_inserter(kept),
               [&](std::size_t one) { return !below[circle_[one]]; });
  return kept;
}

std::vector<std::string> Graph::heads() const {
  std::vector<std::size_t> all(over_.size());
  std::iota(all.begin(), all.end(), std::size_t{0});
  const std::vector<std::size_t> last = standing(all);
  std::vector<std::string> ids;
  ids.reserve(last.size());
  for (const std::size_t one : last) {
    ids.push_back(entries_[one]->id);
  }
  return ids;
}

} // namespace baize::journal
