#pragma once

#include "baize/api/http.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace baize::api {

/// "localhost:8080" -> "localhost", "[::1]:8080" -> "[::1]".
std::string_view host_name(std::string_view host);
/// Is the name one of these, whatever its case? Any name when there are none.
bool host_allowed(std::string_view host, const std::vector<std::string>& hosts);
/// A browser states where the page that sends comes from. Same host and port:
/// own page. No origin: no browser.
bool origin_allowed(std::string_view origin, std::string_view host);
/// Without the blanks and tabs around it.
std::string_view trimmed(std::string_view text);
/// The same word, whatever its case; blanks around it do not matter.
bool is_word(std::string_view text, std::string_view word);
/// Is it "application/json", say, with or without parameters?
bool is_type(std::string_view content_type, std::string_view type);
/// Does If-None-Match name this tag (RFC 9110, 13.1.2: weak comparison, or *)?
bool names_tag(std::string_view if_none_match, std::string_view tag);
/// A strong entity tag for what is said at this target.
std::string make_tag(std::string_view edition, std::string_view state, std::string_view target);

} // namespace baize::api
