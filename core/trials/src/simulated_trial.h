#pragma once

#include "baize/stats/random.h"
#include "baize/trials/power.h"

namespace baize::trials {

/// One simulated trial without any effect: the difference that chance made between
/// the first two treatments, and the standard error that its analysis gives it.
struct Chance {
  double error = 0;
  double limit = 0;
};
/// whole, plot: standard deviations of whole plots (and strips), and of plots.
Chance simulated(const TrialShape& shape, double whole, double plot, bool second,
                 stats::Random& random);

/// Of the comparison of treatments, or of second ones.
int error_df(const TrialShape& shape, bool second);

} // namespace baize::trials
