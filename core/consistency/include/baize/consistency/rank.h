#pragma once

#include "baize/observers/estimate.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::consistency {

/// Spearman's rank correlation: Pearson's of the ranks, ties sharing their mean rank.
/// Absent below three pairs, or where one of the two never changes. Lengths are equal.
/// Source: Spearman (1904) Am. J. Psychol. 15:72-101; Kendall and Gibbons (1990)
/// Rank Correlation Methods, 5th ed., ch. 3.
std::optional<double> spearman(const std::vector<double>& first, const std::vector<double>& second);

/// A pair of values and the green it is from.
struct RankPair {
  std::size_t group = 0;
  double first = 0;
  double second = 0;
};

struct RankCorrelation {
  int pairs = 0;
  int groups = 0;
  observers::Estimate value; ///< -1 to 1; the interval leaves out one group at a time
};

/// Absent where spearman is.
std::optional<RankCorrelation> rank_correlation(const std::vector<RankPair>& pairs,
                                                double confidence = 0.95);

} // namespace baize::consistency
