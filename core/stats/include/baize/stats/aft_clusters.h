#pragma once

#include "baize/stats/aft.h"

namespace baize::stats {

/// fit_aft with errors that hold when observations of one cluster go together
/// (greens worked on one day). Coefficients are those of fit_aft; the covariance is
/// A^-1 (sum over clusters of s s') A^-1, A the information and s a cluster's sum
/// of scores. Huber PJ (1967) Proc. 5th Berkeley Symp. 1:221-233; Lin DY, Wei LJ
/// (1989) J. Am. Stat. Assoc. 84:1074-1078. No correction for small numbers: with
/// fewer than about 30 clusters the errors are too small (MacKinnon JG, White H
/// (1985) J. Econom. 29:305-325); there use fit_aft_frailty.
/// `clusters`: one number for each observation, equal within a cluster.
/// Refuses as fit_aft, and "lengths_differ"; degenerate "too_few_clusters" (more
/// clusters than coefficients needed).
AftFit fit_aft_clustered(const std::vector<AftObservation>& observations,
                         const std::vector<int>& clusters, const AftOptions& options = {});

} // namespace baize::stats
