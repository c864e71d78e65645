#pragma once

#include "baize/season/model.h"

namespace baize::season {

/// What some rolls tell of the level behind them, as so many rolls with that mean
/// would that know no bound.
struct Told {
  double mean = 0;
  double rolls = 0;
};

/// Rolls of one run. Inner ones scatter normally about the level with `sd`; of
/// those scored 10 or 1 it is only known that they lie beyond 9.5 or 1.5. Their
/// likelihood is replaced by the normal one that, upon the belief that the level is
/// normal about `near` with `spread`, gives the same mean and variance (one step of
/// expectation propagation, Minka 2001; integrals by the trapezoid rule, to 1e-6
/// points). Where no roll is at a bound it is those rolls themselves.
Told told_by(const RunMean& run, double sd, double near, double spread);

/// Puts into every run that has rolls at a bound what they tell of the level.
/// `near` is the mean of the looks around that see the same losses, taken anew
/// after each of several rounds.
void open_bounds(GreenModel& green, double roll_sd);

} // namespace baize::season
