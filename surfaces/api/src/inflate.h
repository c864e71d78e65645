#pragma once

#include "baize/units/problem.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace baize::api {

/// The bytes that one gzip member (RFC 1952) was made from. Stops at `most`
/// bytes, whatever a small body claims to hold. Refuses "bad_gzip" and
/// "body_too_long".
units::Result<std::string> inflated(std::string_view body, std::size_t most);

} // namespace baize::api
