#pragma once

#include "baize/units/problem.h"

#include <cmath>
#include <limits>
#include <optional>
#include <vector>

namespace baize::stats {

/// A time known only to lie in (left, right], in any unit of time. Left = right:
/// known exactly. Left 0: before `right`. Right infinite: not yet at `left`.
struct CensoredTime {
  double left = 0;
  double right = std::numeric_limits<double>::infinity();
  bool exact() const { return left == right; }
  bool right_censored() const { return std::isinf(right); }
  friend bool operator==(const CensoredTime&, const CensoredTime&) = default;
};

/// The first time that is none: left not finite or below 0, right below left or
/// NaN. Code "time_out_of_range".
std::optional<units::Problem> bad_time(const std::vector<CensoredTime>& times);

} // namespace baize::stats
