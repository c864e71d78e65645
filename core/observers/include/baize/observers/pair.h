#pragma once

#include "baize/observers/estimate.h"
#include "baize/observers/shared_table.h"
#include "baize/stats/summary.h"
#include "baize/units/problem.h"

#include <string>
#include <vector>

namespace baize::observers {

struct PairOptions {
  double multiplier = 1.96; ///< sds from the bias to a limit, above 0 and below 10
  double confidence = 0.95; ///< above 0 and below 1
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// A point of the picture: difference against mean.
struct PairPoint {
  std::size_t session = 0;
  double mean = 0;
  double difference = 0;
};

/// Two observers over the same balls. Score points throughout. Single balls where
/// both scored at least half of theirs singly, else means of runs.
struct PairAgreement {
  std::string first;
  std::string second;
  bool of_runs = false; ///< items are means of runs, not single balls
  int items = 0;
  int balls = 0;
  int sessions = 0;
  Estimate bias;                           ///< mean of first - second
  double sd_within = 0;                    ///< of differences in one session
  double sd_between = 0;                   ///< of sessions
  double sd = 0;                           ///< of one difference, both together
  Estimate lower_limit;                    ///< bias - multiplier sd: where most differences lie
  Estimate upper_limit;                    ///< bias + multiplier sd
  double equal_share = 0;                  ///< of items with one and the same score
  double within_one = 0;                   ///< share of items at most a point apart
  std::optional<Estimate> kappa_quadratic; ///< single balls only
  std::optional<Estimate> kappa_linear;
  std::optional<Estimate> icc;         ///< ICC(2,1)
  std::optional<Estimate> concordance; ///< Lin's
  std::vector<PairPoint> points;       ///< in the table's order
  stats::Summary summary;
};

/// Every interval by sessions (see by_session), since balls of one stop are judged
/// in one mood. A limit's `se` is its own; its interval joins those of the bias and of
/// log sd as if the two were independent, for a deviation errs further upwards than
/// downwards: sqrt((bias - its end)^2 + (multiplier (sd - its end))^2) to either side,
/// sd taken no further than 9. Where sd is 0 without some session, value -+ t se.
///
/// Supposes differences that do not grow with the score. Coefficients are absent where
/// they do not exist (an observer who gave one score throughout).
///
/// Refuses "unknown_observer", "shared_with_oneself", "no_shared_rolls" (fewer than two
/// sessions), "option_out_of_range"; degenerate "all_equal" where no difference differs:
/// bias and shares are filled in all the same.
///
/// Source: Bland and Altman (1986) Lancet i:307-310 and (2007) J. Biopharm. Stat.
/// 17:571-582; joining intervals: Zou GY (2013) Stat. Methods Med. Res. 22:630-642; the
/// coefficients' as in core/stats.
PairAgreement pair_agreement(const SharedTable& table, const std::string& first,
                             const std::string& second, const PairOptions& options = {});

} // namespace baize::observers
