#pragma once

#include "baize/consistency/figures.h"
#include "baize/observers/estimate.h"

#include <limits>
#include <vector>

namespace baize::consistency {

/// How far a green lies from the others.
struct GreenStanding {
  std::size_t green = 0;
  int days = 0;     ///< days on which it was measured with two other greens or more
  double mean = 0;  ///< of its days' figures
  double level = 0; ///< median of its days' differences from the club's median of the day
  observers::Estimate difference; ///< their mean; the interval leaves out one day at a time
  /// 0.6745 (level - median of levels) / MAD; beyond 3.5 out of line. Absent with
  /// fewer than four greens, or where half the greens are level.
  std::optional<double> robust_z;
  bool out_of_line = false;
};

enum class Quantity { score, speed };

/// Each green of which something is known, in the walk's order. Compared on the same
/// days only, so that a green measured in spring is not held against one measured in
/// summer. Points for the score, metres for the speed.
/// Source: Iglewicz and Hoaglin (1993) How to Detect and Handle Outliers, as in the
/// NIST/SEMATECH e-Handbook 1.3.5.17; the differences by day: common practice.
std::vector<GreenStanding> standings(const std::vector<VisitFigures>& visits, Quantity quantity,
                                     double confidence = 0.95);

} // namespace baize::consistency
