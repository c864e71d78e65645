#pragma once

#include "baize/demo/demo_club.h"

namespace baize::demo {

/// Disruptive and routine works and closures, and what the disruptive ones did.
void do_works(DemoClub& club);

/// 0 Monday to 6 Sunday.
int weekday(units::Day day);
int month(units::Day day);
/// April to October.
bool in_season(units::Day day);
/// Is this green shut by one of the club's closures?
bool closed(const std::vector<green::Work>& closures, units::Day day);

} // namespace baize::demo
