#include "dates.h"

#include "text.h"

#include <algorithm>
#include <array>

namespace baize::weather_files {

namespace {

constexpr std::array<const char*, 5> kNames{"iso", "yyyymmdd", "day_month_year", "month_day_year",
                                            "three_columns"};

/// Digits at the start of `text`, taken off it; at most four. Absent: none there.
std::optional<int> take_digits(std::string_view& text, std::size_t& count) {
  int value = 0;
  count = 0;
  while (count < text.size() && count < 4 && text[count] >= '0' && text[count] <= '9') {
    value = value * 10 + (text[count] - '0');
    ++count;
  }
  text.remove_prefix(count);
  return count > 0 ? std::optional(value) : std::nullopt;
}

/// "T00:00:00", " 00:00", "T00:00Z": a day written as its first moment.
bool midnight(std::string_view text) {
  return text.empty() || (text.size() > 1 && (text[0] == 'T' || text[0] == ' ') &&
                          text.find_first_not_of("0:.Z", 1) == std::string_view::npos);
}

struct Parts {
  std::array<int, 3> number{};
  std::array<std::size_t, 3> digits{};
};

std::optional<Parts> three_parts(std::string_view text) {
  Parts parts;
  char mark = 0;
  for (std::size_t i = 0; i < 3; ++i) {
    if (i > 0) {
      if (text.empty() || (text[0] != '-' && text[0] != '/' && text[0] != '.') ||
          (mark != 0 && text[0] != mark)) {
        return std::nullopt;
      }
      mark = text[0];
      text.remove_prefix(1);
    }
    const auto number = take_digits(text, parts.digits[i]);
    if (!number) {
      return std::nullopt;
    }
    parts.number[i] = *number;
  }
  return midnight(text) ? std::optional(parts) : std::nullopt;
}

std::optional<units::Day> made(int year, int month, int day) {
  const auto result = units::make_day(year, month, day);
  return result ? std::optional(*result) : std::nullopt;
}

std::optional<int> whole(std::string_view text) {
  text = trim(text);
  std::size_t digits = 0;
  const auto value = take_digits(text, digits);
  // "4.0" is how some spreadsheets write the number of a day.
  return text.empty() || text == ".0" ? value : std::nullopt;
}

std::optional<units::Day> eight_digits(std::string_view text) {
  if (text.size() != 8 ||
      !std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; })) {
    return std::nullopt;
  }
  return parse_date(text.substr(0, 4), text.substr(4, 2), text.substr(6, 2));
}

} // namespace

std::optional<DateStyle> date_style(std::string_view name) {
  const auto found = std::find(kNames.begin(), kNames.end(), name);
  if (found == kNames.end()) {
    return std::nullopt;
  }
  return static_cast<DateStyle>(found - kNames.begin());
}

const char* name(DateStyle style) {
  return kNames[static_cast<std::size_t>(style)];
}

std::optional<units::Day> parse_date(std::string_view year, std::string_view month,
                                     std::string_view day) {
  const auto y = whole(year);
  const auto m = whole(month);
  const auto d = whole(day);
  return y && m && d ? made(*y, *m, *d) : std::nullopt;
}

std::optional<units::Day> parse_date(DateStyle style, std::string_view text) {
  text = trim(text);
  if (style == DateStyle::yyyymmdd) {
    return eight_digits(text);
  }
  const auto parts = three_parts(text);
  if (!parts || style == DateStyle::three_columns) {
    return std::nullopt;
  }
  const auto& n = parts->number;
  if (style == DateStyle::iso) {
    return parts->digits[0] == 4 ? made(n[0], n[1], n[2]) : std::nullopt;
  }
  if (parts->digits[2] != 4) {
    return std::nullopt;
  }
  return style == DateStyle::day_month_year ? made(n[2], n[1], n[0]) : made(n[2], n[0], n[1]);
}

void DateWatch::see(std::string_view text) {
  text = trim(text);
  if (text.empty()) {
    return;
  }
  ++seen_;
  if (parse_date(DateStyle::iso, text)) {
    ++iso_;
  } else if (parse_date(DateStyle::yyyymmdd, text)) {
    ++plain_;
  } else if (const auto parts = three_parts(text); parts && parts->digits[2] == 4) {
    ++year_last_;
    first_above_12_ += parts->number[0] > 12 ? 1 : 0;
    second_above_12_ += parts->number[1] > 12 ? 1 : 0;
  }
}

std::string DateWatch::style() const {
  if (2 * iso_ > seen_) {
    return name(DateStyle::iso);
  }
  if (2 * plain_ > seen_) {
    return name(DateStyle::yyyymmdd);
  }
  if (2 * year_last_ <= seen_) {
    return "";
  }
  if ((first_above_12_ > 0) == (second_above_12_ > 0)) {
    return "unknown";
  }
  return name(first_above_12_ > 0 ? DateStyle::day_month_year : DateStyle::month_day_year);
}

} // namespace baize::weather_files
