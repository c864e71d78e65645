#pragma once

#include "baize/units/day.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace baize::demo {

/// One line of rolls and what is true of it.
struct SpotTruth {
  std::string spot;
  std::string half;
  double level_offset = 0; ///< points above the green's level
  double direction = 0;    ///< out scores this much above the mean of both, back as much below
  double slope = 0;        ///< rise over run in the out direction; positive: out rolls uphill
  std::optional<double> defect_m; ///< place of a fault that marks gather at, from the out end
};

/// A green without its works: a slow walk about its base, lower in winter.
struct GreenTruth {
  std::string green;
  double base_level = 0; ///< score points
  double base_speed_m = 0;
  bool seeds_in_may = false;       ///< annual meadow grass in seed roughens it in May
  std::vector<double> undisturbed; ///< by day
  std::vector<double> speed_m;     ///< on the flat, an hour after mowing, by day
  std::vector<SpotTruth> spots;
};

/// What one work did to one green or half: the loss jumps by `depth` that day
/// and then falls each day by rate x growth potential x loss.
struct WorkTruth {
  std::string work;
  std::string green;
  std::string half;
  units::Day day;
  double depth = 0;         ///< score points
  double rate = 0;          ///< per growth-day
  std::vector<double> loss; ///< by day from the work's own, until below a hundredth of a point
};

struct ObserverTruth {
  std::string observer;
  double bias = 0;          ///< points above what is there
  double beginner_bias = 0; ///< added on the first day, halved every 60 days
  double visit_sd = 0;      ///< of one visit's mood
  std::string habit;        ///< in words
};

/// Everything the demo's records were made from, and no estimate.
struct Truth {
  std::uint64_t seed = 0;
  units::Period days;
  std::vector<double> growth; ///< growth potential by day, cool-season settings
  std::vector<GreenTruth> greens;
  std::vector<WorkTruth> works;
  std::vector<ObserverTruth> observers;
  double roll_sd = 0;       ///< of one roll's score about its visit
  double distance_sd_m = 0; ///< of one roll's distance
  double after_play = 0;    ///< points lost by the end of a full day's play

  /// Level of a green, or of a half, with every work's loss taken off. A whole
  /// green with works on halves is the mean of its halves.
  double level(const std::string& green, const std::string& half, units::Day day) const;
};

/// The truth as JSON text: parameters as they are, levels every seventh day to a
/// hundredth of a point. Same truth, same bytes.
std::string truth_json(const Truth& truth);

} // namespace baize::demo
