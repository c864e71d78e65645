#pragma once

#include "baize/api/server.h"

#include <string>

namespace baize::api {

/// One line to read: time, address, method, path, status, bytes, milliseconds, id.
/// Bytes that are no plain ASCII appear as "?", so that no terminal is misled.
std::string log_line(const std::string& now, const Answered& answered);
/// The same as one JSON object, with the route's pattern.
std::string log_json(const std::string& now, const Answered& answered);

} // namespace baize::api
