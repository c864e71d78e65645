#include "base64.h"

#include <cstddef>
#include <cstdint>

namespace baize::entries_json {

namespace {

constexpr std::string_view kSigns =
    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
constexpr std::size_t kGroup = 4; // signs for three bytes

std::uint32_t byte_at(std::string_view bytes, std::size_t at) {
  return at < bytes.size() ? static_cast<unsigned char>(bytes[at]) : 0;
}

/// How many signs of the last group are padding.
std::size_t padding_of(std::string_view text) {
  return text.ends_with("==") ? 2 : text.ends_with('=') ? 1 : 0;
}

} // namespace

std::string to_base64(std::string_view bytes) {
  std::string text;
  text.reserve((bytes.size() + 2) / 3 * kGroup);
  for (std::size_t at = 0; at < bytes.size(); at += 3) {
    const std::uint32_t group =
        byte_at(bytes, at) << 16U | byte_at(bytes, at + 1) << 8U | byte_at(bytes, at + 2);
    const std::size_t signs = bytes.size() - at >= 3 ? kGroup : bytes.size() - at + 1;
    for (std::size_t i = 0; i < kGroup; ++i) {
      text += i < signs ? kSigns[group >> (18U - 6U * i) & 63U] : '=';
    }
  }
  return text;
}

std::optional<std::string> from_base64(std::string_view text) {
  if (text.size() % kGroup != 0) {
    return std::nullopt;
  }
  std::string bytes;
  bytes.reserve(text.size() / kGroup * 3);
  const std::size_t signs = text.size() - padding_of(text);
  std::uint32_t group = 0;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const std::size_t value = at < signs ? kSigns.find(text[at]) : 0;
    if (value == std::string_view::npos) {
      return std::nullopt;
    }
    group = group << 6U | static_cast<std::uint32_t>(value);
    if (at % kGroup == kGroup - 1) {
      bytes += static_cast<char>(group >> 16U & 255U);
      bytes += static_cast<char>(group >> 8U & 255U);
      bytes += static_cast<char>(group & 255U);
      group = 0;
    }
  }
  bytes.resize(bytes.size() - padding_of(text));
  // Bits that no byte holds must be zero: one text for one sequence of bytes.
  return to_base64(bytes) == text ? std::optional(std::move(bytes)) : std::nullopt;
}

} // namespace baize::entries_json
