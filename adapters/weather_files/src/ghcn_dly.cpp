#include "ghcn_parts.h"
#include "text.h"

#include <string>

namespace baize::weather_files {

namespace {

// Columns of the format text, section III, 0-based.
constexpr std::size_t kFirstValue = 21;
constexpr std::size_t kDayWidth = 8;
constexpr std::size_t kLineWidth = 269;

struct Month {
  int year = 0;
  int month = 0;
  std::uint32_t station = 0;
  std::uint32_t name = 0;
  int line = 0;
};

/// A value is whole with its three flags, or where it is missing (their blanks
/// may have been trimmed). False: the line ends before that.
bool whole(std::string_view line, std::size_t at) {
  return line.size() >= at + kDayWidth ||
         (line.size() >= at + 5 && ghcn_number(line.substr(at, 5)) == kGhcnMissing);
}

void read_day(std::string_view line, const Month& month, int day, ElementList& list) {
  const std::size_t at = kFirstValue + kDayWidth * static_cast<std::size_t>(day - 1);
  const std::string_view text = line.substr(at, 5);
  const auto value = ghcn_number(text);
  const auto date = units::make_day(month.year, month.month, day);
  if (!date) {
    if (value != kGhcnMissing) {
      list.notes.add(month.line, "day_past_month_end", "value " + std::to_string(day), text,
                     "-9999, since the month has no such day");
    }
    return;
  }
  list.day(*date);
  if (!value) {
    list.notes.add(month.line, "unreadable", "value " + std::to_string(day), text,
                   "a whole number of five columns; it is left out");
    return;
  }
  if (*value == kGhcnMissing) {
    return;
  }
  list.add({*date, month.station, month.name, *value, line[at + 5], line[at + 6], line[at + 7]});
}

void read_line(std::string_view line, int number, ElementList& list) {
  if (!is_dly_line(line) || !blank(line.substr(std::min(line.size(), kLineWidth)))) {
    list.notes.add(number, "not_a_dly_line", "line", line,
                   "station, year, month, element and 31 values in 269 columns; it is left out");
    return;
  }
  Month month;
  // is_dly_line has seen to it that these are digits.
  month.year = static_cast<int>(*ghcn_number(line.substr(11, 4)));
  month.month = static_cast<int>(*ghcn_number(line.substr(15, 2)));
  month.line = number;
  if (!units::make_day(month.year, month.month, 1)) {
    list.notes.add(number, "no_such_day", "year and month", line.substr(11, 6),
                   "a month of the years 1600 to 2600; the line is left out");
    return;
  }
  month.station = list.station(trim(line.substr(0, 11)));
  month.name = list.name(line.substr(17, 4));
  list.row();
  for (int day = 1; day <= 31; ++day) {
    if (!whole(line, kFirstValue + kDayWidth * static_cast<std::size_t>(day - 1))) {
      list.notes.add(number, "cut_short", "line", std::to_string(line.size()) + " columns",
                     "269 columns; its days from the " + std::to_string(day) + ". on are left out");
      return;
    }
    read_day(line, month, day, list);
  }
}

} // namespace

GhcnElements read_ghcn_dly(std::string_view content) {
  ElementList list;
  for (Lines lines(content); lines.next();) {
    if (!blank(lines.line())) {
      read_line(lines.line(), lines.number(), list);
    }
  }
  return list.take();
}

} // namespace baize::weather_files
