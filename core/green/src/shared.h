#pragma once

#include "baize/green/visit.h"
#include "baize/units/problem.h"

#include <vector>

namespace baize::green {

/// Visits with the same shared_rolls: other observers, one day, one green or
/// half, the same runs with as many rolls. A visit alone with its id waits for
/// the other and is no fault.
std::vector<units::Problem> check_shared(const std::vector<Visit>& visits);

} // namespace baize::green
