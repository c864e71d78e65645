#include "baize/api/target.h"

#include <optional>

namespace baize::api {

namespace {

std::optional<int> hexadecimal(char c) {
  if (c >= '0' && c <= '9') {
    return c - '0';
  }
  if (c >= 'a' && c <= 'f') {
    return c - 'a' + 10;
  }
  if (c >= 'A' && c <= 'F') {
    return c - 'A' + 10;
  }
  return std::nullopt;
}

/// RFC 3986: unreserved, sub-delims, and what paths and queries allow beside.
bool allowed(char c) {
  const bool letter_or_digit =
      (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
  return letter_or_digit ||
         std::string_view("-._~!$&'()*+,;=:@/?%[]|").find(c) != std::string_view::npos;
}

/// Bytes of the well-formed character at `at` (Unicode 15, table 3-7); 0: none.
std::size_t character_length(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) {
    return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U;
  };
  const auto within = [&](std::size_t i, unsigned low, unsigned high) {
    return byte(i) >= low && byte(i) <= high;
  };
  const unsigned lead = byte(at);
  if (lead < 0x80) {
    return 1;
  }
  if (lead >= 0xC2 && lead <= 0xDF) {
    return within(at + 1, 0x80, 0xBF) ? 2 : 0;
  }
  if (lead >= 0xE0 && lead <= 0xEF) {
    const unsigned low = lead == 0xE0 ? 0xA0 : 0x80;
    const unsigned high = lead == 0xED ? 0x9F : 0xBF;
    return within(at + 1, low, high) && within(at + 2, 0x80, 0xBF) ? 3 : 0;
  }
  if (lead >= 0xF0 && lead <= 0xF4) {
    const unsigned low = lead == 0xF0 ? 0x90 : 0x80;
    const unsigned high = lead == 0xF4 ? 0x8F : 0xBF;
    const bool good =
        within(at + 1, low, high) && within(at + 2, 0x80, 0xBF) && within(at + 3, 0x80, 0xBF);
    return good ? 4 : 0;
  }
  return 0;
}

bool is_utf8(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = character_length(text, at);
    if (length == 0) {
      return false;
    }
    at += length;
  }
  return true;
}

/// Absent: a broken triplet, a zero byte, or no UTF-8.
std::optional<std::string> decode(std::string_view text, bool plus_is_blank) {
  std::string out;
  out.reserve(text.size());
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] == '%') {
      const auto high = i + 1 < text.size() ? hexadecimal(text[i + 1]) : std::nullopt;
      const auto low = i + 2 < text.size() ? hexadecimal(text[i + 2]) : std::nullopt;
      if (!high || !low || (*high == 0 && *low == 0)) {
        return std::nullopt;
      }
      out.push_back(static_cast<char>(*high * 16 + *low));
      i += 2;
    } else {
      out.push_back(plus_is_blank && text[i] == '+' ? ' ' : text[i]);
    }
  }
  return is_utf8(out) ? std::optional(out) : std::nullopt;
}

units::Refusal bad(std::string_view text, std::string rule) {
  return units::refuse("bad_target", "target", std::string(text.substr(0, 200)), std::move(rule));
}

constexpr const char* kEncoding = "percent-encoded UTF-8 without a zero byte";

units::Result<void> read_query(std::string_view text, Target& target) {
  while (!text.empty()) {
    const std::string_view pair = text.substr(0, text.find('&'));
    text.remove_prefix(std::min(text.size(), pair.size() + 1));
    if (pair.empty()) {
      continue;
    }
    const std::size_t equals = pair.find('=');
    const auto name = decode(pair.substr(0, equals), true);
    const auto value = equals == std::string_view::npos ? std::optional(std::string())
                                                        : decode(pair.substr(equals + 1), true);
    if (!name || !value) {
      return bad(pair, kEncoding);
    }
    if (!target.query.emplace(*name, *value).second) {
      return bad(pair, "a query that gives each parameter once");
    }
  }
  return {};
}

units::Result<void> read_path(std::string_view path, Target& target) {
  target.path = std::string(path);
  std::string_view rest = path.substr(1);
  while (true) {
    const std::size_t slash = rest.find('/');
    auto segment = decode(rest.substr(0, slash), false);
    if (!segment) {
      return bad(path, kEncoding);
    }
    target.segments.push_back(std::move(*segment));
    if (slash == std::string_view::npos) {
      return {};
    }
    rest.remove_prefix(slash + 1);
  }
}

} // namespace

units::Result<Target> parse_target(std::string_view text) {
  const std::string_view whole = text;
  Target target;
  for (const char c : text) {
    if (!allowed(c)) {
      return bad(whole, "a path and query in the characters of RFC 3986");
    }
  }
  for (const std::string_view scheme : {"http://", "https://"}) {
    if (text.substr(0, scheme.size()) == scheme) {
      text.remove_prefix(scheme.size());
      target.authority = std::string(text.substr(0, text.find_first_of("/?")));
      text.remove_prefix(target.authority.size());
      break;
    }
  }
  if (text.empty() || text.front() != '/') {
    return bad(whole, "a path that starts with a slash");
  }
  const std::size_t question = text.find('?');
  auto path = read_path(text.substr(0, question), target);
  if (!path) {
    return tl::unexpected(path.error());
  }
  if (question != std::string_view::npos) {
    auto query = read_query(text.substr(question + 1), target);
    if (!query) {
      return tl::unexpected(query.error());
    }
  }
  return target;
}

} // namespace baize::api
