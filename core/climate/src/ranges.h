#pragma once

#include "baize/units/problem.h"

#include <optional>
#include <string>

namespace baize::climate {

/// A value, its name, and where it may lie.
struct Ranged {
  const char* field;
  std::optional<double> value; ///< absent: nothing to check
  double lowest;
  double highest;
  const char* unit;
};

/// The problem of the first value that lies outside; a NaN always does.
template <class Values>
std::optional<units::Problem> first_outside(const Values& values, const char* code);

/// One value; the workhorse of the above.
std::optional<units::Problem> outside(const Ranged& ranged, const char* code);

template <class Values>
std::optional<units::Problem> first_outside(const Values& values, const char* code) {
  for (const Ranged& ranged : values) {
    if (auto found = outside(ranged, code)) {
      return found;
    }
  }
  return std::nullopt;
}

} // namespace baize::climate
