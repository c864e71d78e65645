#pragma once

#include "balls.h"

namespace baize::demo {

/// One observer's visit: what they wrote down of the balls they watched.
green::Visit look(const DemoClub& club, const Stop& stop, int observer,
                  const std::vector<Line>& lines, const green::Conditions& conditions);

} // namespace baize::demo
