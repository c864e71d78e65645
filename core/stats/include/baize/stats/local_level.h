#pragma once

#include "baize/stats/summary.h"

#include <optional>
#include <vector>

namespace baize::stats {

struct LevelReading {
  double day = 0;              ///< any real number; order of the readings is free
  std::optional<double> value; ///< empty: not measured, but a level is wanted
  double weight = 1;           ///< above 0; the value's variance is noise / weight
};

/// value = level(day) + noise; the level walks at random, by level_per_day a day.
struct LocalLevelVariances {
  double noise = 0;         ///< of a value of weight 1, 0 or more
  double level_per_day = 0; ///< 0 or more
};

struct LevelEstimate {
  double day = 0;
  double level = 0;
  double standard_error = 0; ///< given the variances as known: their own error is not in it
};

struct LocalLevelFit {
  Summary summary;
  LocalLevelVariances variances;
  double log_likelihood = 0; ///< diffuse: over all values but the first
  int values = 0;
  std::vector<LevelEstimate> levels; ///< one for each different day, in order
};

struct LocalLevelOptions {
  int max_iterations = 100; ///< 1 to 10000, of the search for the ratio of the variances
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Maximum likelihood by the concentrated diffuse log-likelihood: for each ratio
/// of the two variances their scale has a closed form, so the search is over one
/// number, both ends (level constant; no noise) included, on a grid first since
/// there may be two hills. Durbin J, Koopman SJ (2012) Time Series Analysis by
/// State Space Methods, 2nd ed., ch. 2. Ends as `boundary` where a variance is 0.
/// Refuses "not_finite", "weight_out_of_range", "too_few_values" (3 needed);
/// degenerate "all_equal".
LocalLevelFit fit_local_level(const std::vector<LevelReading>& readings,
                              const LocalLevelOptions& options = {});

/// The levels with variances known beforehand. One value is enough. Refuses as
/// above, and "negative_variance"; degenerate "value_contradicts" where without
/// noise two values of one day differ.
LocalLevelFit smooth_local_level(const std::vector<LevelReading>& readings,
                                 const LocalLevelVariances& variances);

} // namespace baize::stats
