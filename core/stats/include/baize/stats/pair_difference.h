#pragma once

#include <cstddef>
#include <vector>

namespace baize::stats {

/// How far two means lie apart, before any method has judged it.
struct PairDifference {
  std::size_t first = 0; ///< places in the list of means; first < second
  std::size_t second = 0;
  double difference = 0; ///< mean[first] - mean[second]
  double standard_error = 0;
  double df = 0; ///< of the standard error; need not be whole
};

/// All pairs of means that share one error: standard error sqrt(variance (1/n_i + 1/n_j)).
/// variance: the residual mean square, with `df` degrees of freedom. Pairs of a mean
/// without a count are left out.
std::vector<PairDifference> pair_differences(const std::vector<double>& means,
                                             const std::vector<int>& counts, double variance,
                                             double df);

} // namespace baize::stats
