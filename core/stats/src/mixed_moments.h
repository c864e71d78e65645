#pragma once

#include "mixed_design.h"

#include <vector>

namespace baize::stats::detail {

/// Za' Zb of two terms by blocks: for each group of a, those groups of b that it
/// meets, ascending, each with a block of (columns of a) by (columns of b).
struct Cross {
  int rows = 0;
  int columns = 0;
  std::vector<int> start; ///< of each group of a; one more at the end
  std::vector<int> group; ///< of b
  std::vector<double> value;
  const double* block(int entry) const {
    return &value[static_cast<std::size_t>(entry) * rows * columns];
  }
};

/// All sums of products that the likelihood needs: from here on the number of
/// rows no longer matters.
struct MixedMoments {
  /// Of terms a <= b, at index(a, b). On the diagonal only the groups' own blocks.
  std::vector<Cross> cross;
  /// Za' [q y] of each term: for each group (columns of a) by (fixed + 1).
  std::vector<std::vector<double>> response;
  int terms = 0;
  std::size_t index(int a, int b) const {
    return static_cast<std::size_t>(a) * static_cast<std::size_t>(terms) +
           static_cast<std::size_t>(b);
  }
};
MixedMoments moments(const MixedDesign& design);

} // namespace baize::stats::detail
