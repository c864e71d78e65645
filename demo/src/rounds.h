#pragma once

#include "baize/demo/demo_club.h"

namespace baize::demo {

/// Three years of rounds: two or three a week in season, thin in winter, none on
/// closed days. Greens that rolled well last time or were just worked on are
/// measured less; before a fixture nearly all are.
void walk_rounds(DemoClub& club);

} // namespace baize::demo
