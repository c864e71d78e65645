#pragma once

#include "baize/consistency/figures.h"
#include "baize/observers/estimate.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::consistency {

/// Out against back at one spot, paired by visit.
struct SpotDirections {
  std::size_t green = 0;
  std::string spot;
  int visits = 0;              ///< with both directions scored
  observers::Estimate score;   ///< mean of out - back, points
  std::optional<double> p;     ///< paired t, two-sided; absent below three visits or without spread
  std::optional<double> p_all; ///< the same after Holm's correction for all spots
  int speeds = 0;              ///< visits with both directions measured
  observers::Estimate rise;    ///< apparent slope, percent; above 0: out runs uphill
  std::optional<double> rise_sd;    ///< between visits, beyond the error of measuring; 0: none
  std::optional<double> p_changing; ///< chi-squared, of a slope so changing where it is steady
};

/// What may lie behind a spot's two directions.
enum class DirectionFinding {
  too_few,     ///< not enough visits with both directions
  alike,       ///< scores of the two directions cannot be told apart, and the slope is steady
  slope,       ///< balls run further one way, equally at every visit: that is the ground
  score_apart, ///< one direction scores lower while distances show a steady slope or none
  changing     ///< the apparent slope changes from visit to visit: grass, mowing or wind
};
DirectionFinding finding(const SpotDirections& spot, double alpha = 0.05);

/// Apparent slope of a visit from the two directions' mean distances, in percent: 100 s,
/// s = 7/5 v^2/(4 g) (1/out - 1/back), v the release speed. The ground's slope is the same
/// at every visit; grain, mowing direction and wind are not. Error of a mean distance
/// by its number of balls and 0.10 m a ball. Wind and hollows make a slope of
/// their own, so a finding is a reason to look, not a verdict.
/// Source: Penner (2002) Can. J. Phys. 80:83-96; homogeneity by Cochran's Q (1954)
/// Biometrics 10:101-129; Holm (1979) Scand. J. Stat. 6:65-70.
std::vector<SpotDirections> directions(const std::vector<VisitFigures>& visits,
                                       double confidence = 0.95);

} // namespace baize::consistency
