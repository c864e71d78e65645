#pragma once

#include "baize/trials/plan.h"

#include <cstddef>

namespace baize::trials {

/// In which order the plots are visited: places in `plan.plots`. Whole blocks one
/// after the other, so that dew, wear and the hour change between blocks and not
/// between treatments; within a block to and fro along its rows, from a corner
/// drawn anew for every two visits. Every second visit goes the way before
/// backwards: over two visits no plot is earlier on average than another.
/// visit: from 1. The plan has no problem.
std::vector<std::size_t> walk(const Plan& plan, int visit);

/// Writes the first walk into `walk` of each plot.
void number_walk(Plan& plan);

} // namespace baize::trials
