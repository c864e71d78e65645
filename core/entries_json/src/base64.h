#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace baize::entries_json {

/// RFC 4648, section 4: padded, no line breaks.
std::string to_base64(std::string_view bytes);
/// The only bytes that are written so; nothing for any other text.
std::optional<std::string> from_base64(std::string_view text);

} // namespace baize::entries_json
