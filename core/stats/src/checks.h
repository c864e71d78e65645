#pragma once

#include "baize/stats/summary.h"
#include "baize/units/number.h"

#include <cmath>
#include <cstddef>
#include <initializer_list>
#include <optional>
#include <span>
#include <string>

/// The refusals that many methods share, so that they read alike.
namespace baize::stats {

/// An option that must lie strictly between two numbers.
inline std::optional<units::Problem> outside_open(const char* field, double value, double low,
                                                  double high, const char* rule) {
  if (value > low && value < high) {
    return std::nullopt;
  }
  return units::Problem{"option_out_of_range", field, units::write_number(value), rule, {}};
}

inline std::optional<units::Problem> too_few(const char* field, std::size_t found,
                                             std::size_t least) {
  if (found >= least) {
    return std::nullopt;
  }
  return units::Problem{
      "too_few", field, std::to_string(found), "at least " + std::to_string(least), {}};
}

inline std::optional<units::Problem> lengths_differ(const char* field, std::size_t found,
                                                    std::size_t wanted) {
  if (found == wanted) {
    return std::nullopt;
  }
  return units::Problem{"lengths_differ",
                        field,
                        std::to_string(found) + " values",
                        "as many as its partner, " + std::to_string(wanted),
                        {}};
}

/// The first value that is NaN or infinite, counted from 1.
inline std::optional<units::Problem> not_finite(const char* field, std::span<const double> values) {
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (!std::isfinite(values[i])) {
      return units::Problem{"not_finite", field, units::write_number(values[i]), "a finite number",
                            "value " + std::to_string(i + 1)};
    }
  }
  return std::nullopt;
}

/// What is left of a difference of equal numbers of this size after rounding.
inline double rounding_of(double largest) {
  return 64 * 2.220446049250313e-16 * std::fabs(largest);
}

inline double largest_of(std::span<const double> values) {
  double largest = 0;
  for (const double value : values) {
    largest = std::fmax(largest, std::fabs(value));
  }
  return largest;
}

/// Done where every number is finite; otherwise the numbers were too large.
inline Summary done_if_finite(std::initializer_list<double> results) {
  for (const double result : results) {
    if (!std::isfinite(result)) {
      return degenerate({"too_large", "values", "out of the reach of the computation",
                         "numbers whose squares can still be added", ""});
    }
  }
  return done();
}

} // namespace baize::stats
