#pragma once

#include "baize/season/fit.h"
#include "baize/stats/ljung_box.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::season {

/// Standardised innovations: how far each visit's mean lay from what the model
/// expected just before it, in its own standard deviations. Chance alone gives
/// mean 0, sd 1, about 4.6 % outside 2, and no autocorrelation.
struct Surprises {
  double mean = 0;
  double sd = 0;
  double outside = 0;      ///< share beyond 2 either way
  stats::LjungBox in_line; ///< from visit to visit of each green, 8 lags, 2 fitted
  bool like_chance = false;
};

/// The same records fitted with either clock.
struct Clocks {
  double growth_days = 0;   ///< log-likelihood of the records at the best parameters
  double calendar_days = 0; ///< likewise
  double difference() const { return growth_days - calendar_days; }
  /// Two units of log-likelihood: the records are 7 times likelier with one.
  bool told_apart() const { return difference() > 2 || difference() < -2; }
};

/// How far a method's mean depth and log rate move, in their own standard errors.
struct Shift {
  std::string method;
  double depth = 0;
  double rate = 0;
};

/// All beliefs refitted `times` as wide.
struct Leaning {
  double times = 1;
  std::vector<Shift> methods;
  double most = 0; ///< largest shift, without sign
};

struct Checks {
  stats::Summary summary;
  Surprises surprises;
  std::optional<Clocks> clocks; ///< absent where the weather is too thin for growth-days
  std::vector<Leaning> leaning; ///< beliefs half as wide, then twice
};

/// Surprises alone: one run of the filter.
Surprises surprises_of(const SeasonFit& fit);

/// Three further fits, each as long as the first, of the records that `fit` was
/// made from. Surprises are like chance where sd lies from 0.9 to 1.1, at most
/// 7 % are outside 2, and the test of autocorrelation gives p above 0.01: common
/// practice, no source. Innovations and the test: Durbin J, Koopman SJ (2012) Time
/// Series Analysis by State Space Methods, 2nd ed., 2.12; two units of
/// log-likelihood: Edwards AWF (1972) Likelihood, 3.5. `watch` may stop it.
/// Refuses what `fit` refused.
Checks check_season(const SeasonFit& fit, const green::Records& records,
                    const climate::Weather& weather, const stats::Watch& watch = {});

} // namespace baize::season
