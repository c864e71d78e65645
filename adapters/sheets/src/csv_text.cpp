#include "baize/sheets/csv.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>
#include <cstring>

namespace baize::sheets {
namespace {

constexpr std::string_view kMark = "\xEF\xBB\xBF";
constexpr const char* kWanted = "UTF-8 text; save the sheet again as CSV in UTF-8";

unsigned byte(std::string_view text, std::size_t at) {
  return at < text.size() ? static_cast<unsigned char>(text[at]) : 0U;
}

bool follows(unsigned b) {
  return (b & 0xC0U) == 0x80U;
}

/// Bytes of the UTF-8 sequence at `at`, or 0 where there is none (RFC 3629: no
/// overlong forms, no surrogates, nothing above U+10FFFF). NUL is none either.
std::size_t sequence(std::string_view text, std::size_t at) {
  const unsigned first = byte(text, at);
  const unsigned second = byte(text, at + 1);
  if (first < 0x80U) {
    return first != 0 ? 1 : 0;
  }
  if (first >= 0xC2U && first <= 0xDFU) {
    return follows(second) ? 2 : 0;
  }
  if (first >= 0xE0U && first <= 0xEFU) {
    const bool narrow = (first == 0xE0U && second < 0xA0U) || (first == 0xEDU && second > 0x9FU);
    return follows(second) && !narrow && follows(byte(text, at + 2)) ? 3 : 0;
  }
  if (first >= 0xF0U && first <= 0xF4U) {
    const bool narrow = (first == 0xF0U && second < 0x90U) || (first == 0xF4U && second > 0x8FU);
    const bool rest = follows(byte(text, at + 2)) && follows(byte(text, at + 3));
    return follows(second) && !narrow && rest ? 4 : 0;
  }
  return 0;
}

/// True when eight bytes at `at` are plain ASCII without NUL.
bool eight_plain(std::string_view text, std::size_t at) {
  std::uint64_t word = 0;
  std::memcpy(&word, text.data() + at, sizeof word);
  constexpr std::uint64_t kHigh = 0x8080808080808080U;
  constexpr std::uint64_t kOnes = 0x0101010101010101U;
  return ((word | (word - kOnes)) & kHigh) == 0;
}

std::size_t first_bad_byte(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size()) {
    if (at + 8 <= text.size() && eight_plain(text, at)) {
      at += 8;
      continue;
    }
    const std::size_t length = sequence(text, at);
    if (length == 0) {
      return at;
    }
    at += length;
  }
  return std::string_view::npos;
}

units::Problem not_utf8(std::string value, std::string place) {
  return {"not_utf8", "text", std::move(value), kWanted, std::move(place)};
}

} // namespace

std::size_t byte_order_mark(std::string_view content) {
  return content.starts_with(kMark) ? kMark.size() : 0;
}

std::optional<units::Problem> text_problem(std::string_view content) {
  if (content.size() > kLargestFile) {
    return units::Problem{
        "too_large",
        "size",
        fmt::format("{} bytes", content.size()),
        fmt::format("at most {} bytes (128 MiB); split the file by year", kLargestFile),
        {}};
  }
  if (content.starts_with("\xFF\xFE") || content.starts_with("\xFE\xFF")) {
    return not_utf8("UTF-16", "line 1 byte 1");
  }
  const std::size_t bad = first_bad_byte(content);
  if (bad == std::string_view::npos) {
    return std::nullopt;
  }
  const auto line = 1 + std::count(content.begin(), content.begin() + bad, '\n');
  return not_utf8(fmt::format("byte 0x{:02X}", byte(content, bad)),
                  fmt::format("line {} byte {}", line, bad + 1));
}

} // namespace baize::sheets
