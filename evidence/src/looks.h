#pragma once

#include "baize/stats/censored_time.h"
#include "baize/stats/random.h"

namespace baize::evidence {

/// How a green is looked at after a work.
struct Looks {
  int every = 4;          ///< days; the first look has a day of its own
  double missed_good = 0; ///< chance that a look is left out once the roll is good again
};

/// What the looks leave known of a time.
struct Seen {
  stats::CensoredTime recorded;
  stats::CensoredTime if_good; ///< had looks been missed only because the roll was good
  bool missed = false;         ///< whether the two differ
};

/// Looks until the first good one, at the latest `horizon` days after the work. Their gaps
/// while below are `every` days: that is what is usual.
Seen seen(double time, const Looks& looks, int horizon, stats::Random& chance);

} // namespace baize::evidence
