#pragma once

#include "baize/units/day.h"

#include <cstdint>
#include <string>

namespace baize::apps {

/// The day on the wall calendar here, by the machine's time zone.
units::Day today();
/// Seconds since 1970-01-01T00:00:00Z.
std::int64_t seconds();
/// RFC 3339 in UTC, to the second.
std::string now();

} // namespace baize::apps
