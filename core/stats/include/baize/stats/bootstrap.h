#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace baize::stats {

/// A statistic of the units with these numbers, 0 to units - 1, some drawn several
/// times; NaN where it cannot be had from them.
using Resampled = std::function<double(const std::vector<std::size_t>& drawn)>;

struct BootstrapOptions {
  int repeats = 2000;       ///< 100 to 1000000
  std::uint64_t seed = 1;   ///< each repeat has its own stream of it
  double confidence = 0.95; ///< above 0 and below 1
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct Bootstrap {
  Summary summary;
  double estimate = 0; ///< of all units once
  double bias = 0;     ///< mean of the repeats less the estimate
  double standard_error = 0;
  Interval percentile;
  /// Bias-corrected and accelerated; absent where the statistic without one unit cannot
  /// be had, or all repeats lie on one side of the estimate.
  std::optional<Interval> bca;
  double bias_correction = 0;  ///< z0
  double acceleration = 0;     ///< a, from leaving out each unit in turn
  int failed = 0;              ///< repeats without a statistic, left out
  std::vector<double> repeats; ///< the others, ascending
};

/// Uncertainty by drawing the units (greens, plots, works ...) again with replacement.
/// Draw whole units: values of one unit are not independent. The BCa interval allows for
/// a statistic whose spread changes with its value. Quantiles by straight lines between
/// the order statistics at i / (repeats + 1). Efron B (1987) J. Am. Stat. Assoc.
/// 82:171-185; Efron B, Tibshirani RJ (1993) An Introduction to the Bootstrap, ch. 14.
/// Refuses "option_out_of_range", "too_few" (2 units), "not_finite" (the statistic of all
/// units); degenerate "all_equal", and "too_few" where half of the repeats or more failed;
/// stopped when `watch` says so.
Bootstrap bootstrap(std::size_t units, const Resampled& statistic,
                    const BootstrapOptions& options = {}, const Watch& watch = {});

} // namespace baize::stats
