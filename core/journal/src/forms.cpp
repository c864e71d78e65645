// How identifiers and instants are written.
#include "baize/journal/entry.h"
#include "baize/units/day.h"

#include <algorithm>

namespace baize::journal {
namespace {

/// Does `text` look like `pattern`, where 0 stands for any digit and h for any
/// hexadecimal digit in lower case?
bool shaped(std::string_view text, std::string_view pattern) {
  const auto fits = [](char c, char p) {
    const bool digit = c >= '0' && c <= '9';
    return p == '0' ? digit : p == 'h' ? digit || (c >= 'a' && c <= 'f') : c == p;
  };
  return std::equal(text.begin(), text.end(), pattern.begin(), pattern.end(), fits);
}

std::int64_t number_at(std::string_view text, std::size_t at, std::size_t width) {
  std::int64_t value = 0;
  for (const char c : text.substr(at, width)) {
    value = value * 10 + (c - '0');
  }
  return value;
}

} // namespace

bool is_uuid(std::string_view text) {
  return shaped(text, "hhhhhhhh-hhhh-7hhh-hhhh-hhhhhhhhhhhh");
}

units::Result<std::int64_t> parse_instant(std::string_view text) {
  const bool whole = shaped(text, "0000-00-00T00:00:00Z");
  if (whole || shaped(text, "0000-00-00T00:00:00.000Z")) {
    const auto day = units::parse_iso_day(text.substr(0, 10));
    const std::int64_t hour = number_at(text, 11, 2);
    const std::int64_t minute = number_at(text, 14, 2);
    const std::int64_t second = number_at(text, 17, 2);
    // A leap second may be written; it counts as the next minute's first.
    if (day && hour < 24 && minute < 60 && second <= 60) {
      const std::int64_t seconds =
          std::int64_t{day->since_epoch} * 86400 + hour * 3600 + minute * 60 + second;
      return seconds * 1000 + (whole ? 0 : number_at(text, 20, 3));
    }
  }
  return units::refuse("not_an_instant", "at", shown(Value{std::string(text)}),
                       "a time in UTC written YYYY-MM-DDTHH:MM:SS.mmmZ");
}

} // namespace baize::journal
