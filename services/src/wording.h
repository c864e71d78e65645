#pragma once

#include "baize/units/day.h"

#include <string>
#include <string_view>
#include <vector>

namespace baize::services {

/// "1 green", "3 greens". `many` where an s will not do: "1 day of frost".
std::string counted(int number, std::string_view one, std::string_view many = {});
/// "24 March 2025".
std::string plain(units::Day day);
/// "2.4", or "2.1 to 2.7" where the two differ once rounded.
std::string range(double low, double high, int places);
/// "63 %", whole; 0 and 100 only when it is exactly so.
std::string percent(int part, int whole);
/// "was" or "were".
std::string_view was(int number);

} // namespace baize::services
