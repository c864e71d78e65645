#pragma once

#include "losses.h"

namespace baize::season {

/// Sum of squares of single rolls about their run's mean.
struct RollScatter {
  double squares = 0;
  int rolls = 0;
  int runs = 0;
};

/// One green's losses and looks of the days. Observers and methods are entered as
/// they are met. A look on a loss's own day that may have been before or after it
/// is left out and counted in `unclear`.
GreenModel gather_green(const green::Records& records, const green::Green& green,
                        units::Period days, const GrowthCurve& curve, const Options& options,
                        Names& observers, Names& methods, RollScatter& scatter, int& unclear);

} // namespace baize::season
