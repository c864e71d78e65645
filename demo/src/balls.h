#pragma once

#include "baize/demo/demo_club.h"

#include <vector>

namespace baize::demo {

/// A stop at a green: where and when balls are rolled.
struct Stop {
  int place = 0; ///< of the green in walking order
  units::Day day;
  int minute = 0;
  std::string half; ///< only this half's spots; empty: all
};

/// What a ball did, before anybody looked.
struct Ball {
  double quality = 0; ///< score points, not yet whole
  double distance_m = 0;
};

/// Three balls of one direction at a spot.
struct Line {
  const SpotTruth* spot = nullptr;
  green::Direction direction = green::Direction::out;
  std::vector<Ball> balls;
};

/// Balls rolled at a stop; the same for every observer who stands there.
std::vector<Line> roll_balls(const DemoClub& club, const Stop& stop,
                             const green::Conditions& conditions);
/// What the green was like then, as an observer would note it.
green::Conditions conditions_at(const DemoClub& club, const Stop& stop);

} // namespace baize::demo
