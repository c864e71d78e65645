#pragma once

#include "baize/green/roll.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::green {

/// Where a record came from, so that every figure can be followed back.
struct Source {
  std::string file; ///< name of the file it was read from, or empty
  int line = 0;     ///< 1-based; 0 where there is no file
  friend bool operator==(const Source&, const Source&) = default;
};

/// The state of the green at a visit; each may be unknown.
struct Conditions {
  std::optional<double> hours_since_mowing;
  std::optional<double> hours_since_rolling;
  std::optional<std::string> dew;     ///< none, light, heavy
  std::optional<std::string> wind;    ///< calm, breeze, strong
  std::optional<std::string> surface; ///< dry, moist, wet, frosted
  friend bool operator==(const Conditions&, const Conditions&) = default;
};

/// One observer at one green.
struct Visit {
  std::string id;
  std::string green;
  std::string half; ///< empty: the whole green
  std::string observer;
  units::Day day;
  std::optional<units::Minute> from;
  std::optional<units::Minute> to;
  /// Visits with the same id are the same balls, scored apart by several
  /// observers: runs match by spot and direction, rolls by order. Empty: none.
  std::string shared_rolls;
  Conditions conditions;
  std::vector<Run> runs;
  std::string note;
  Source source;
  friend bool operator==(const Visit&, const Visit&) = default;
};

} // namespace baize::green
