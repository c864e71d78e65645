#pragma once

#include "baize/stats/local_level.h"

namespace baize::stats::detail {

/// Levels and log-likelihood of readings in order of day, at least one of them with a
/// value, the variances given. The recursions of kalman_smooth for one state, written in
/// plain numbers: ten years of days take a fraction of what matrices of one row take.
/// Degenerate "value_contradicts", "not_finite".
LocalLevelFit smooth_sorted(const std::vector<LevelReading>& readings,
                            const LocalLevelVariances& variances);

} // namespace baize::stats::detail
