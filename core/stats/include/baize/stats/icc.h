#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"

#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

namespace baize::stats {

/// One row for each item (a roll, a green), one column for each observer.
using Ratings = std::vector<std::vector<double>>;

/// One form of the coefficient. May be below 0 where observers agree less than by
/// chance.
struct IccForm {
  double value = std::numeric_limits<double>::quiet_NaN();
  Interval interval;
};

/// The six intraclass correlations. "Single" is the trust in one observer's
/// score, "mean" in the mean of all k.
struct Icc {
  std::size_t items = 0;
  std::size_t observers = 0;
  double between_items = std::numeric_limits<double>::quiet_NaN();     ///< mean square BMS
  double within_items = std::numeric_limits<double>::quiet_NaN();      ///< WMS
  double between_observers = std::numeric_limits<double>::quiet_NaN(); ///< JMS
  double residual = std::numeric_limits<double>::quiet_NaN();          ///< EMS
  IccForm one_way_single; ///< ICC(1,1): each item by other observers
  IccForm random_single;  ///< ICC(2,1): observers drawn from many, their bias counts
  IccForm fixed_single;   ///< ICC(3,1): just these observers, their bias does not count
  IccForm one_way_mean;   ///< ICC(1,k)
  /// ICC(2,k); absent where observers agree so much less than by chance that it,
  /// or the lower end of its interval, does not exist.
  std::optional<IccForm> random_mean;
  IccForm fixed_mean; ///< ICC(3,k)
  Summary summary;
};

/// From the analysis of variance of a complete table. Intervals are exact for
/// the one-way and fixed forms under normal errors, by Satterthwaite's degrees of
/// freedom for the random forms. Refuses "too_few" (below 2 items or 2 observers),
/// "lengths_differ" (a row with another number of scores), "not_finite",
/// "option_out_of_range"; degenerate "all_equal" where items do not differ on the
/// mean, or where observers never differ but by a constant: F is then 0 or
/// infinite and no interval can be drawn. The mean squares, and the single forms
/// where they exist, are filled in all the same.
/// Source: Shrout and Fleiss (1979) Psychol. Bull. 86:420-428.
Icc intraclass_correlation(const Ratings& ratings, const ConfidenceOptions& options = {});

} // namespace baize::stats
