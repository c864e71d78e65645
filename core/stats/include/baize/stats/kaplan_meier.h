#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"

#include <optional>
#include <vector>

namespace baize::stats {

/// A time to the end, or the last look at one that had not ended.
struct FollowUp {
  double time = 0;   ///< 0 or more
  bool ended = true; ///< false: right-censored at `time`
};

/// At each time something ended.
struct SurvivalStep {
  double time = 0;
  int at_risk = 0; ///< not ended and still looked at just before; censored then counts
  int ended = 0;
  double survival = 0;                ///< share not ended after that
  double standard_error = 0;          ///< Greenwood's
  std::optional<Interval> confidence; ///< absent where nothing is left (survival 0)
};

struct KaplanMeier {
  Summary summary;
  std::vector<SurvivalStep> steps;
  /// First time at which at most half are left; absent where half are never reached.
  std::optional<double> median;
  int times = 0;
  int ended = 0;
};

/// Product-limit estimate for exact and right-censored times. Kaplan EL, Meier P
/// (1958) J. Am. Stat. Assoc. 53:457-481; standard error S sqrt(sum d / (n (n-d)))
/// by Greenwood; interval on the scale log(-log S), which stays within 0 and 1.
/// Refuses "too_few" (1 needed), "time_out_of_range", "option_out_of_range";
/// degenerate "all_censored" where nothing ended.
KaplanMeier kaplan_meier(const std::vector<FollowUp>& times, const ConfidenceOptions& = {});

struct LogRank {
  Summary summary;
  int observed_first = 0;    ///< ended in the first group
  double expected_first = 0; ///< if both groups ended alike
  double variance = 0;       ///< of observed less expected, hypergeometric
  double chi_squared = 0;    ///< 1 degree of freedom
  double p = 1;
};

/// Do two groups end alike? Mantel N (1966) Cancer Chemother. Rep. 50:163-170.
/// Refuses as kaplan_meier, for each group; degenerate "all_censored" where
/// nothing ended while both groups were looked at.
LogRank log_rank(const std::vector<FollowUp>& first, const std::vector<FollowUp>& second);

} // namespace baize::stats
