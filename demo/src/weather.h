#pragma once

#include "baize/climate/weather.h"

#include <vector>

namespace baize::demo {

/// 1995 to 1997 as 2023 to 2025.
climate::Weather demo_weather();
/// Growth potential of each day of the period with the cool-season settings.
std::vector<double> growth_of(const climate::Weather& weather, units::Period days);

} // namespace baize::demo
