#pragma once

#include "baize/demo/demo_club.h"

namespace baize::demo {

/// Places in the walking order, from 0.
constexpr int kGreens = 19;

/// Club, greens with their spots, observers, standards and fixtures; and what is
/// true of the greens and observers.
void lay_ground(DemoClub& club);

/// The observer's bias on a day: a beginner's fades.
double bias_on(const ObserverTruth& observer, const green::Observer& record, units::Day day);

} // namespace baize::demo
