#pragma once

#include "baize/green/club.h"

#include <vector>

namespace baize::services {

/// One green's share of the club's records: the green, its visits up to and with
/// `until`, every work that touches it, and the club's standards and fixtures.
/// Reviews of all greens cut the records once, so that each stays linear in them.
green::Records slice(const green::Records& records, const green::Green& green, units::Day until);
/// One for each green, in walking order.
std::vector<green::Records> slices(const green::Records& records, units::Day until);

} // namespace baize::services
