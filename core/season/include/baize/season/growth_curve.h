#pragma once

#include "baize/climate/growth.h"

#include <vector>

namespace baize::season {

/// What a loss decays with.
enum class Clock { growth_days, calendar_days };

/// Growth-days from a fixed first day, so that the growth between any two days is
/// one subtraction. Where the weather has no temperature, and for days to come,
/// the normal of that day of the year stands: the mean growth potential of the
/// file's same days, fifteen days to either side. With calendar days every day
/// counts 1.
class GrowthCurve {
 public:
  GrowthCurve() = default;
  GrowthCurve(const climate::Weather& weather, const climate::GrowthOptions& options,
              units::Period days, Clock clock);

  /// Growth-days after `from` up to and with `to`, 0 where `to` is not later.
  /// Days outside the curve's period count as its nearest day.
  double between(units::Day from, units::Day to) const;
  /// Days of the period, up to `until`, without a temperature.
  int missing(units::Day until) const;

 private:
  double at(units::Day day) const;
  units::Day first_;
  std::vector<double> sum_;  ///< growth-days up to and with each day
  std::vector<int> missing_; ///< how many up to and with each day had no temperature
};

} // namespace baize::season
