#pragma once

#include "baize/demo/demo_club.h"

namespace baize::demo {

/// Firmness, soil moisture, clipping volume, height of cut, organic matter and
/// how far the holes of a coring have closed.
void take_readings(DemoClub& club);

} // namespace baize::demo
