#include "baize/units/day.h"

#include <algorithm>
#include <chrono>

namespace baize::units {
namespace {

namespace chrono = std::chrono;

constexpr int kFirstYear = 1600;
constexpr int kLastYear = 2600;

std::string digits(int value, std::size_t width) {
  std::string text = std::to_string(value);
  return text.size() < width ? std::string(width - text.size(), '0') + text : text;
}

/// Does `text` look like `pattern`, where 0 stands for any digit?
bool shaped(std::string_view text, std::string_view pattern) {
  return std::equal(text.begin(), text.end(), pattern.begin(), pattern.end(),
                    [](char c, char p) { return p == '0' ? c >= '0' && c <= '9' : c == p; });
}

int number_at(std::string_view text, std::size_t at, std::size_t width) {
  int value = 0;
  for (const char c : text.substr(at, width)) {
    value = value * 10 + (c - '0');
  }
  return value;
}

chrono::year_month_day civil(Day day) {
  return chrono::sys_days{chrono::days{day.since_epoch}};
}

chrono::year_month_day civil(int year, int month, int day) {
  return chrono::year{year} / chrono::month(static_cast<unsigned>(month)) /
         chrono::day(static_cast<unsigned>(day));
}

Day counted(const chrono::year_month_day& date) {
  return {static_cast<std::int32_t>(chrono::sys_days{date}.time_since_epoch().count())};
}

} // namespace

Result<Day> make_day(int year, int month, int day) {
  const auto refused = [&] {
    return refuse("no_such_day", "day",
                  digits(year, 4) + "-" + digits(month, 2) + "-" + digits(day, 2),
                  "a day of the calendar from 1600 to 2600");
  };
  // The calendar types hold small numbers only; look before narrowing.
  if (year < kFirstYear || year > kLastYear || month < 1 || month > 12 || day < 1 || day > 31) {
    return refused();
  }
  const auto date = civil(year, month, day);
  if (!date.ok()) {
    return refused();
  }
  return counted(date);
}

YearMonthDay year_month_day(Day day) {
  const auto date = civil(day);
  return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
          static_cast<int>(static_cast<unsigned>(date.day()))};
}

int day_of_year(Day day) {
  const auto first = civil(day).year() / chrono::January / 1;
  return day - counted(first) + 1;
}

Result<Day> parse_iso_day(std::string_view text) {
  if (!shaped(text, "0000-00-00")) {
    return refuse("not_a_day", "day", std::string(text), "a day written YYYY-MM-DD");
  }
  return make_day(number_at(text, 0, 4), number_at(text, 5, 2), number_at(text, 8, 2));
}

std::string iso(Day day) {
  const auto [year, month, of_month] = year_month_day(day);
  return digits(year, 4) + "-" + digits(month, 2) + "-" + digits(of_month, 2);
}

Result<Minute> parse_minute(std::string_view text) {
  const bool read = shaped(text, "00:00");
  const int hour = read ? number_at(text, 0, 2) : 24;
  const int minute = read ? number_at(text, 3, 2) : 60;
  if (hour > 23 || minute > 59) {
    return refuse("not_a_time", "time", std::string(text),
                  "a time of the day written HH:MM, 00:00 to 23:59");
  }
  return Minute{static_cast<std::int16_t>(hour * 60 + minute)};
}

std::string iso(Minute minute) {
  return digits(minute.of_day / 60, 2) + ":" + digits(minute.of_day % 60, 2);
}

Result<MonthDay> parse_month_day(std::string_view text) {
  constexpr int kLeapYear = 2000; // so that 29 February is a day of the year
  const bool read = shaped(text, "00-00");
  const int month = read ? number_at(text, 0, 2) : 0;
  const int day = read ? number_at(text, 3, 2) : 0;
  if (!read || !make_day(kLeapYear, month, day)) {
    return refuse("not_a_month_day", "day", std::string(text), "a day of the year written MM-DD");
  }
  return MonthDay{month, day};
}

std::string iso(MonthDay month_day) {
  return digits(month_day.month, 2) + "-" + digits(month_day.day, 2);
}

Period calendar_year(int year) {
  const chrono::year counted_year{year};
  return {counted(counted_year / chrono::January / 1),
          counted(counted_year / chrono::December / 31)};
}

} // namespace baize::units
