#pragma once

#include "baize/units/day.h"

#include <string>

namespace baize::apps {

/// The day on the wall calendar here, by the machine's time zone.
units::Day today();
/// RFC 3339 in UTC, to the second.
std::string now();

} // namespace baize::apps
