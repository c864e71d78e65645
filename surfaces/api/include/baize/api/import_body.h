#pragma once

#include "baize/services/store_port.h"

#include <string_view>
#include <vector>

namespace baize::api {

inline constexpr std::size_t kMostFiles = 64;
inline constexpr std::size_t kLongestFileName = 255;

/// Reads {"files": [{"name": ..., "content": ...}]} and nothing else, in one
/// pass: what does not belong ends the reading at once, however deep or long it
/// is. Refuses "bad_json" (not JSON) and "bad_import" (JSON of another shape, no
/// file, more than 64, a name twice, a name that is empty, longer than 255
/// bytes, or holds a slash, backslash or control character).
units::Result<std::vector<services::ReceivedFile>> read_import_body(std::string_view body);

} // namespace baize::api
