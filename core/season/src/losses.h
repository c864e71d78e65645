#pragma once

#include "baize/season/model.h"

namespace baize::season {

/// Names met so far and their places.
struct Names {
  std::vector<std::string> all;
  std::size_t place(const std::string& name);
};

/// A loss and the hours of its works, where all of them have one.
struct TimedLoss {
  Loss loss;
  bool timed = false;
  units::Minute begins;
  units::Minute ends;
};

/// The disruptive works of a green on or before the last day, and at most a year
/// before the first, by day and half; those of one day and half together.
std::vector<TimedLoss> losses_of(const green::Records& records, const green::Green& green,
                                 units::Period days, const Options& options, Names& methods);

} // namespace baize::season
