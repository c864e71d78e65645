#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"

#include <cstdint>
#include <limits>

namespace baize::stats {

/// A share of yes among yes and no, e.g. true days among measured days.
struct Proportion {
  double share = std::numeric_limits<double>::quiet_NaN(); ///< successes / trials
  Interval interval; ///< within 0 to 1; meaningless unless the summary is usable
  Summary summary;
};

/// Both refuse "too_few" without a trial, "successes_out_of_range" below 0 or
/// above `trials`, and "option_out_of_range".

/// Exact: each tail of the binomial holds at most half of what the interval
/// leaves out, so that it covers at least as often as it says, often more.
///   low = Beta quantile of a/2 (x, n - x + 1), high = of 1 - a/2 (x + 1, n - x)
/// Source: Clopper and Pearson (1934) Biometrika 26:404-413.
Proportion clopper_pearson(std::int64_t successes, std::int64_t trials,
                           const ConfidenceOptions& options = {});

/// From the score test: shorter, covers as it says on average, sensible for few
/// trials and for shares near 0 and 1.
///   (p + z^2/2n +- z sqrt(p(1-p)/n + z^2/4n^2)) / (1 + z^2/n)
/// Source: Wilson (1927) J. Am. Stat. Assoc. 22:209-212.
Proportion wilson(std::int64_t successes, std::int64_t trials,
                  const ConfidenceOptions& options = {});

} // namespace baize::stats
