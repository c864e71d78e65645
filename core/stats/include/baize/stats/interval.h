#pragma once

#include "baize/units/problem.h"

#include <optional>

namespace baize::stats {

/// The two ends of an interval of confidence, in the unit of the estimate.
struct Interval {
  double low = 0;
  double high = 0;
  friend bool operator==(const Interval&, const Interval&) = default;
};

/// For methods whose one choice is how wide their intervals are.
struct ConfidenceOptions {
  double confidence = 0.95; ///< above 0 and below 1
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

} // namespace baize::stats
