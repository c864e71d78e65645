#pragma once

#include "baize/stats/aft.h"

namespace baize::stats {

struct AftFrailtyOptions {
  AftOptions aft;
  int nodes = 21; ///< of the quadrature, 3 to 99
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// What a cluster's log times have in common, beyond the covariates.
struct AftClusterEffect {
  int cluster = 0;
  double value = 0;          ///< of log time, mean given the data
  double standard_error = 0; ///< deviation given the data
  int observations = 0;
};

struct AftFrailtyFit {
  /// Coefficients, scale within clusters and log-likelihood of the model with
  /// clusters; aft_quantile gives times of a cluster in the middle.
  AftFit fit;
  double cluster_sd = 0;           ///< of the clusters' log times; 0 at the boundary
  double log_cluster_sd_error = 0; ///< standard error of log(cluster_sd); 0 at the boundary
  double log_likelihood_plain = 0; ///< without clusters
  double likelihood_ratio = 0;     ///< twice the difference
  /// Half of that of chi-squared on 1 degree: 0 lies at the edge of the range.
  double likelihood_ratio_p = 1;
  int clusters = 0;
  std::vector<AftClusterEffect> effects; ///< in order of the clusters' numbers
};

/// Accelerated failure time regression with a normal effect of each cluster on log
/// time: log t = b0 + b1 x1 + ... + u + scale W, u normal with mean 0 and deviation
/// cluster_sd. The marginal likelihood by adaptive Gauss-Hermite quadrature: Liu Q,
/// Pierce DA (1994) Biometrika 81:624-629; Lambert P, Collett D, Kimber A, Johnson R
/// (2004) Stat. Med. 23:3177-3192. Errors from the second derivatives (Louis TA
/// (1982) J. R. Stat. Soc. B 44:226-233). Maximum likelihood: with few clusters
/// cluster_sd comes out too small.
/// Where the likelihood falls from cluster_sd 0 on, it ends with
/// Termination::boundary and is the fit without clusters; the half mixture:
/// Self SG, Liang K-Y (1987) J. Am. Stat. Assoc. 82:605-610.
/// `clusters`: one number for each observation, equal within a cluster. Refuses and
/// is degenerate as fit_aft; also "lengths_differ", and degenerate
/// "too_few_clusters" (2 needed) and "clusters_of_one" (one of two observations
/// needed).
AftFrailtyFit fit_aft_frailty(const std::vector<AftObservation>& observations,
                              const std::vector<int>& clusters,
                              const AftFrailtyOptions& options = {});

} // namespace baize::stats
