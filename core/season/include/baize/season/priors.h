#pragma once

#include <cmath>

namespace baize::season {

/// A normal distribution that says what is believed before the records are read.
struct Prior {
  double mean = 0;
  double sd = 1;
  /// Twice as wide, for the check of how much the answers lean on it.
  Prior wider(double times) const { return {mean, sd * times}; }
};

/// What the season model believes beforehand, in one place. Each is wide enough
/// to give way to a season's records, and narrow enough that a club with two
/// works and forty visits gets an answer. Judged from the ranges that keepers
/// report: common practice, no source. Fit again with wider() to see how much an
/// answer leans on them.
struct Priors {
  Prior observer{0, 0.5};                    ///< points an observer stands above the mean of all
  Prior play{-0.5, 0.5};                     ///< points of a whole day's play
  Prior depth{1.3, 1.0};                     ///< mean depth of a method, points
  Prior log_rate{std::log(0.17), 0.5};       ///< a club's works in general, per growth-day
  double log_rate_between = 0.5;             ///< sd of one method about the club's works
  double log_rate_within = 0.12;             ///< sd of one loss about its method: shade, soil
  Prior log_level_walk{std::log(0.03), 0.7}; ///< sd of a day's step of the undisturbed level
  Prior log_visit_sd{std::log(0.15), 0.7};   ///< sd of what a whole visit shares
  Prior log_line_sd{std::log(0.10), 0.7};    ///< sd of one line and direction about its green
  Prior log_depth_spread{std::log(0.25),
                         0.5}; ///< sd of one work's depth, as a share of its method's
  /// Calendar days instead of growth-days: a year's mean growth potential is about a half.
  double log_rate_calendar = std::log(0.085);

  Priors wider(double times) const;
};

} // namespace baize::season
