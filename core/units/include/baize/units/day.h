#pragma once

#include "baize/units/problem.h"

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace baize::units {

/// A day of the proleptic Gregorian calendar, counted from 1970-01-01. There is
/// no time zone in it: a visit's day is the day the club's wall calendar showed.
struct Day {
  std::int32_t since_epoch = 0;

  friend auto operator<=>(const Day&, const Day&) = default;
  friend Day operator+(Day d, int n) { return {d.since_epoch + n}; }
  friend Day operator-(Day d, int n) { return {d.since_epoch - n}; }
  friend int operator-(Day a, Day b) { return a.since_epoch - b.since_epoch; }
  Day& operator++() {
    ++since_epoch;
    return *this;
  }
};

struct YearMonthDay {
  int year = 1970;
  int month = 1;
  int day = 1;
};

/// Refuses days that do not exist (30 February) with code "no_such_day", and
/// years outside 1600 to 2600 (a slip of the pen, not a date) likewise.
Result<Day> make_day(int year, int month, int day);
YearMonthDay year_month_day(Day day);
/// 1 to 366.
int day_of_year(Day day);
/// Only YYYY-MM-DD.
Result<Day> parse_iso_day(std::string_view text);
std::string iso(Day day);

/// Minutes since local midnight, 0 to 1439.
struct Minute {
  std::int16_t of_day = 0;
  friend auto operator<=>(const Minute&, const Minute&) = default;
};
/// Only HH:MM, 24 hours.
Result<Minute> parse_minute(std::string_view text);
std::string iso(Minute minute);

/// A day of the year without a year, for seasons that return.
struct MonthDay {
  int month = 1;
  int day = 1;
  friend auto operator<=>(const MonthDay&, const MonthDay&) = default;
};
/// Only MM-DD.
Result<MonthDay> parse_month_day(std::string_view text);
std::string iso(MonthDay month_day);

/// First and last day, both inside.
struct Period {
  Day first;
  Day last;
  int days() const { return last - first + 1; }
  bool holds(Day d) const { return first <= d && d <= last; }
  friend bool operator==(const Period&, const Period&) = default;
};
/// 1 January to 31 December.
Period calendar_year(int year);

} // namespace baize::units
