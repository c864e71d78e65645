#pragma once

#include "baize/stats/aft.h"

namespace baize::stats {

struct AftTest {
  Summary summary;
  double statistic = 0; ///< chi-squared on `df` degrees where the covariates do nothing
  int df = 0;
  double p = 1;
};

/// Do the last `tested` covariates do nothing? S' I^-1 S at the fit without them,
/// S the slopes in coefficients / scale and 1 / scale, I minus the second
/// derivatives there, which in these are never negative. Rao CR (1948) Proc. Camb. Phil. Soc.
/// 44:50-57. Holds also where the full fit runs away (nothing of one group has ended). Refuses and
/// is degenerate as fit_aft of all but the tested; also "tested_out_of_range" (from 1 to the count
/// of covariates) and "singular_design".
AftTest aft_score_test(const std::vector<AftObservation>& observations, int tested,
                       const AftOptions& options = {});

/// The same question by twice the difference of the log-likelihoods.
AftTest aft_likelihood_ratio_test(const std::vector<AftObservation>& observations, int tested,
                                  const AftOptions& options = {});

} // namespace baize::stats
