#pragma once

#include "baize/stats/mixed.h"

#include <vector>

namespace baize::stats {

struct MixedProfile {
  Summary summary;
  std::vector<Interval> coefficients;
  std::vector<std::vector<Interval>> random; ///< standard deviations, by term and effect
  Interval residual_sd;
};

/// Intervals that hold what a likelihood-ratio test does not reject: for each
/// coefficient and standard deviation in turn the others are fitted anew, by full
/// maximum likelihood whatever `options.restricted` says. Unlike value and error
/// they need not be symmetric; a standard deviation's low end is 0 where 0 itself
/// is not rejected. Bates D et al. (2015) J. Stat. Softw. 67(1), 5.1. Some
/// twenty searches for each end. Ends are good to 1e-6 relative.
/// Refuses as fit_mixed; not_converged where an end cannot be found.
MixedProfile profile_mixed(const MixedModel& model, const MixedOptions& options = {});

} // namespace baize::stats
