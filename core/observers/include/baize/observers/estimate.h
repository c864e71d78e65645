#pragma once

#include "baize/stats/interval.h"

#include <cstddef>
#include <functional>
#include <limits>
#include <optional>
#include <vector>

namespace baize::observers {

/// A figure with its uncertainty. Error and interval are absent with fewer than
/// three sessions: two differ by chance as they please.
struct Estimate {
  double value = std::numeric_limits<double>::quiet_NaN();
  std::optional<double> se;
  std::optional<stats::Interval> interval;
  /// Does the interval leave 0 out?
  bool apart_from_zero() const { return interval && (interval->low > 0 || interval->high < 0); }
};

/// The figure without one session, or with all of them. Absent where it does not exist.
using WithoutSession = std::function<std::optional<double>(std::optional<std::size_t> left_out)>;

/// Value -+ t se with sessions - 1 degrees of freedom, se^2 = (g - 1)/g sum (v[i]
/// - mean)^2 over the figures v[i] without session i: the jackknife over groups,
/// which leaves the likeness of a session's balls in the error. Absent where the
/// figure of all sessions is. `lowest` and `highest` cut the interval.
/// Source: Efron and Tibshirani (1993) An Introduction to the Bootstrap, ch. 11.
std::optional<Estimate> by_session(std::size_t sessions, const WithoutSession& figure,
                                   double confidence,
                                   double lowest = -std::numeric_limits<double>::infinity(),
                                   double highest = std::numeric_limits<double>::infinity());

/// Count, sum and sum of squares of one session's values.
struct Sums {
  double n = 0;
  double sum = 0;
  double squares = 0;
  void add(double value) {
    n += 1;
    sum += value;
    squares += value * value;
  }
};

/// The mean of all sessions' values, each weighing the same; its error leaves out
/// one session at a time.
std::optional<Estimate> mean_by_session(const std::vector<Sums>& sessions, double confidence);

/// The spread of single values, half of it common to a session.
struct Spread {
  double mean = 0;
  double within = 0;  ///< variance of balls about their session's mean
  double between = 0; ///< variance of sessions' own means, never below 0
  double total = 0;   ///< of one ball in one session
};

/// One-way analysis of variance with random sessions of unequal size: within = MSW,
/// between = (MSB - MSW) / n0, n0 = (N - sum n^2 / N) / (g - 1). Where every
/// session has one value the two cannot be told apart and all is `between`. Absent
/// with fewer than two sessions.
/// Source: Bland and Altman (2007) J. Biopharm. Stat. 17:571-582; Searle (1971)
/// Linear Models, 11.1.
std::optional<Spread> spread(const std::vector<Sums>& sessions,
                             std::optional<std::size_t> left_out = std::nullopt);

} // namespace baize::observers
