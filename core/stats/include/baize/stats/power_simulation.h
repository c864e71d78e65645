#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/random.h"
#include "baize/stats/summary.h"

#include <functional>
#include <optional>

namespace baize::stats {

/// Draws one data set and says whether its test was significant; absent where the test
/// had no usable answer.
using TrialDraw = std::function<std::optional<bool>(Random& random)>;

struct PowerSimulationOptions {
  int repeats = 2000;       ///< 1 to 10000000
  std::uint64_t seed = 1;   ///< each repeat has its own stream of it
  double confidence = 0.95; ///< above 0 and below 1
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct SimulatedPower {
  Summary summary;
  int repeats = 0;
  int significant = 0;
  int unanswered = 0; ///< counted among the repeats: a test that fails finds nothing
  double power = 0;   ///< significant / repeats
  Interval interval;  ///< what more repeats might still say: Wilson's
};

/// Power by drawing trials as the plan has them and testing each, for designs without
/// a formula. Wilson EB (1927) J. Am. Stat. Assoc. 22:209-212 for the interval.
/// Refuses "option_out_of_range"; stopped when `watch` says so.
SimulatedPower simulate_power(const TrialDraw& draw, const PowerSimulationOptions& options = {},
                              const Watch& watch = {});

} // namespace baize::stats
