#pragma once

#include "losses.h"

namespace baize::season {

/// Sum of squares of single rolls about their run's mean.
struct RollScatter {
  double squares = 0;
  int rolls = 0;
  int runs = 0;
  void add(const RollScatter& more);
};
/// Near 10 rolls scatter less, as no score is above it. Runs are told apart by
/// their mean, which says nothing of the scatter about it.
struct Scatter {
  RollScatter inside; ///< of runs whose mean is no more than 8.5, nor less than 2.5
  RollScatter outside;
};

/// One green's losses and looks of the days. Observers and methods are entered as
/// they are met. A look on a loss's own day that may have been before or after it
/// is left out and counted in `unclear`.
GreenModel gather_green(const green::Records& records, const green::Green& green,
                        units::Period days, const GrowthCurve& curve, const Options& options,
                        Names& observers, Names& methods, Scatter& scatter, int& unclear);

} // namespace baize::season
