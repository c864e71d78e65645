#include "guard.h"

#include <algorithm>
#include <array>
#include <cstdint>

namespace baize::api {

namespace {

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool same(std::string_view a, std::string_view b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](char x, char y) { return lower(x) == lower(y); });
}

} // namespace

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t");
  if (first == std::string_view::npos) {
    return {};
  }
  return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::string_view host_name(std::string_view host) {
  const std::size_t bracket = host.find(']');
  const std::size_t colon = host.find(':', bracket == std::string_view::npos ? 0 : bracket);
  return host.substr(0, colon);
}

bool host_allowed(std::string_view host, const std::vector<std::string>& hosts) {
  return hosts.empty() || std::any_of(hosts.begin(), hosts.end(), [&](const std::string& name) {
           return same(host_name(host), name);
         });
}

bool origin_allowed(std::string_view origin, std::string_view host) {
  if (origin.empty()) {
    return true;
  }
  for (const std::string_view scheme : {"http://", "https://"}) {
    if (same(origin.substr(0, scheme.size()), scheme) && !host.empty() &&
        same(origin.substr(scheme.size()), host)) {
      return true;
    }
  }
  return false;
}

bool is_word(std::string_view text, std::string_view word) {
  return same(trimmed(text), word);
}

bool is_type(std::string_view content_type, std::string_view type) {
  return same(trimmed(content_type.substr(0, content_type.find(';'))), type);
}

bool names_tag(std::string_view if_none_match, std::string_view tag) {
  while (!if_none_match.empty()) {
    std::string_view one = if_none_match.substr(0, if_none_match.find(','));
    if_none_match.remove_prefix(std::min(if_none_match.size(), one.size() + 1));
    one = trimmed(one);
    if (one.substr(0, 2) == "W/") {
      one.remove_prefix(2);
    }
    if (one == "*" || one == tag) {
      return true;
    }
  }
  return false;
}

std::string make_tag(std::string_view edition, std::string_view state, std::string_view target) {
  std::uint64_t hash = 14695981039346656037U; // FNV-1a, 64 bits
  for (const std::string_view part : {edition, state, target}) {
    for (const char c : part) {
      hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211U;
    }
    hash = (hash ^ 0xFFU) * 1099511628211U; // no byte of UTF-8: parts cannot run together
  }
  static constexpr std::string_view kDigits = "0123456789abcdef";
  std::string tag = "\"";
  for (int shift = 60; shift >= 0; shift -= 4) {
    tag += kDigits[(hash >> shift) & 15U];
  }
  return tag + '"';
}

} // namespace baize::api
