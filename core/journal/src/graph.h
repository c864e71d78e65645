#pragma once

#include "baize/journal/entry.h"

#include <cstddef>
#include <string>
#include <vector>

namespace baize::journal {

/// The graph of one thing's entries. Entries are numbered as they stand.
class Graph {
 public:
  /// `entries` sorted by id, each id once; they must outlive the graph.
  explicit Graph(const std::vector<const Entry*>& entries);

  /// Those of `among` (sorted numbers) that no other of `among` supersedes.
  std::vector<std::size_t> standing(const std::vector<std::size_t>& among) const;
  /// Ids of entries that none supersedes.
  std::vector<std::string> heads() const;
  /// Ids named in `over` that are not here: sorted, each once.
  const std::vector<std::string>& missing() const { return missing_; }

 private:
  void find_circles();
  struct Walk;

  const std::vector<const Entry*>& entries_;
  std::vector<std::vector<std::size_t>> over_;
  /// Entries that reach each other share a number; alone, each has its own.
  std::vector<std::size_t> circle_;
  std::vector<std::vector<std::size_t>> members_; ///< of each circle
  std::vector<std::string> missing_;
};

} // namespace baize::journal
