#pragma once

#include "baize/demo/demo_club.h"

namespace baize::demo {

/// Undisturbed level and speed of every green by day. Needs the works, for
/// rolling and for what a loss takes off the speed.
void walk_levels(DemoClub& club);

/// Losses of all works at a green (and half: of works on the whole green and on it).
double loss_on(const Truth& truth, const std::string& green, const std::string& half,
               units::Day day);

} // namespace baize::demo
