#pragma once

#include "baize/green/club.h"
#include "baize/speed/green_speed.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::consistency {

/// One direction at a spot.
struct RunFigures {
  green::Direction direction = green::Direction::out;
  std::optional<double> score;  ///< mean of its scored balls
  std::vector<double> balls;    ///< single scores, where they were written down
  std::optional<double> mean_m; ///< mean distance
  int measured = 0;             ///< balls with a distance
};

struct SpotFigures {
  std::string spot;
  std::vector<RunFigures> runs;
  std::optional<speed::SpotSpeed> speed;
};

/// What one visit measured.
struct VisitFigures {
  std::string visit;
  std::size_t green = 0; ///< place in the club's walk
  units::Day day;
  std::optional<units::Minute> at;
  std::optional<double> score; ///< mean of its scored balls
  std::optional<double> speed_m;
  std::vector<SpotFigures> spots;
};

/// Visits of the club's greens in the period, by green, day, time and id. Of visits
/// that share their balls only the one with most scored balls counts (the first by
/// id of equals): the others saw nothing else.
std::vector<VisitFigures> visit_figures(const green::Records& records, units::Period period);

} // namespace baize::consistency
