#pragma once

#include "baize/season/model.h"

namespace baize::season {

/// Puts the runs of each look together, by their rolls: its mean, its lines, what it
/// saw of each loss, and what its runs tell beside it. Needs runs, run_share,
/// growth and lines.
void weigh(GreenModel& green);

} // namespace baize::season
