#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/pair_difference.h"
#include "baize/stats/summary.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::stats {

enum class PairMethod {
  tukey,                       ///< all pairs at once: honestly significant difference
  least_significant_difference ///< each pair as if it were the only one (Fisher)
};

struct MeanComparisonOptions {
  PairMethod method = PairMethod::tukey;
  double alpha = 0.05; ///< of all pairs (Tukey) or of each pair (Fisher); above 0, below 1
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct ComparedPair {
  std::size_t first = 0;
  std::size_t second = 0;
  double difference = 0; ///< mean[first] - mean[second]
  double standard_error = 0;
  double df = 0;
  double p = 1;
  Interval interval; ///< of the difference, at 1 - alpha; together for all pairs (Tukey)
  bool significant = false;
};

struct MeanComparisons {
  Summary summary;
  std::vector<ComparedPair> pairs;
  /// One for each mean: means that share a letter are not told apart. The greatest
  /// mean has "a".
  std::vector<std::string> letters;
  /// How far two means must lie apart; absent where that differs between pairs.
  std::optional<double> least_difference;
};

/// Compares all pairs of means. Tukey: P(Q >= sqrt(2) |difference| / standard error)
/// by the studentized range of as many means; for unequal counts that is
/// Tukey-Kramer, never too bold (Hayter AJ (1984) Ann. Stat. 12:61-75). Where pairs
/// have errors of their own, each is judged by its own standard error and degrees of
/// freedom, which is approximate. Fisher's least significant difference keeps its
/// risk for each pair only: use it after an F test and for few means.
/// pairs: every pair of means once, from `pair_differences` or `trial_means`.
/// Refuses "option_out_of_range", "too_few" (2 means), "too_many" (200 means, 52
/// letters), "not_finite", "pairs_incomplete", "standard_error_out_of_range" (above
/// 0; df 1 or more).
MeanComparisons compare_means(const std::vector<double>& means,
                              const std::vector<PairDifference>& pairs,
                              const MeanComparisonOptions& options = {});

/// Letters for means of which `apart` are told apart (pairs of places): insert and
/// absorb. Piepho HP (2004) J. Comput. Graph. Stat. 13:456-466. Ordered by the means
/// from the greatest, letters a to z and then A to Z; empty where these do not
/// suffice or a pair does not exist.
std::vector<std::string>
compact_letters(const std::vector<double>& means,
                const std::vector<std::pair<std::size_t, std::size_t>>& apart);

} // namespace baize::stats
