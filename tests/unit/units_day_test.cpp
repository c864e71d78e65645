#include "baize/units/day.h"

#include <gtest/gtest.h>

namespace {

using namespace baize::units;

Day day(int y, int m, int d) {
  return make_day(y, m, d).value();
}

TEST(Day, CountsFromItsEpoch) {
  // 2000-03-01 is day 11017: 30 years of 365 days, 7 leap days (1972 to 1996),
  // and 60 days of a leap year: 10950 + 7 + 60.
  EXPECT_EQ(day(1970, 1, 1).since_epoch, 0);
  EXPECT_EQ(day(2000, 3, 1).since_epoch, 11017);
  EXPECT_EQ(day(1969, 12, 31).since_epoch, -1);
}

TEST(Day, KnowsLeapYearsOfTheCentury) {
  // Gregorian rule (ISO 8601): centuries are leap years only when 400 divides them.
  EXPECT_TRUE(make_day(2000, 2, 29));
  EXPECT_FALSE(make_day(1900, 2, 29));
  EXPECT_FALSE(make_day(2100, 2, 29));
  EXPECT_EQ(day_of_year(day(2024, 12, 31)), 366);
  EXPECT_EQ(day_of_year(day(2025, 12, 31)), 365);
  EXPECT_EQ(day_of_year(day(2024, 3, 1)), 61);
}

TEST(Day, RefusesWhatTheCalendarHasNot) {
  for (const auto& [y, m, d] : {std::tuple{2024, 2, 30},
                                {2024, 13, 1},
                                {2024, 0, 1},
                                {2024, 4, 31},
                                {2024, 1, 0},
                                {1599, 12, 31},
                                {2601, 1, 1},
                                {2024, -3, 258}}) {
    const auto made = make_day(y, m, d);
    ASSERT_FALSE(made) << y << "-" << m << "-" << d;
    EXPECT_EQ(made.error().code, "no_such_day");
  }
  EXPECT_TRUE(make_day(1600, 1, 1));
  EXPECT_TRUE(make_day(2600, 12, 31));
}

TEST(Day, ReadsOnlyIso) {
  EXPECT_EQ(parse_iso_day("2026-11-25").value(), day(2026, 11, 25));
  for (const char* text : {"", "2026-1-05", "25.11.2026", "2026-11-25 ", " 2026-11-25",
                           "2026/11/25", "20261125", "+026-11-25", "2026-11-2x"}) {
    const auto read = parse_iso_day(text);
    ASSERT_FALSE(read) << text;
    EXPECT_EQ(read.error().code, "not_a_day");
    EXPECT_EQ(read.error().value, text);
  }
  EXPECT_EQ(parse_iso_day("2026-02-29").error().code, "no_such_day");
}

TEST(Minute, ReadsOnlyHoursAndMinutes) {
  EXPECT_EQ(parse_minute("00:00").value().of_day, 0);
  EXPECT_EQ(parse_minute("23:59").value().of_day, 1439);
  for (const char* text : {"24:00", "12:60", "7:30", "07:30:00", "0730", "", "07.30"}) {
    ASSERT_FALSE(parse_minute(text)) << text;
    EXPECT_EQ(parse_minute(text).error().code, "not_a_time");
  }
  EXPECT_EQ(iso(Minute{7 * 60 + 5}), "07:05");
}

TEST(MonthDay, HasA29thOfFebruary) {
  EXPECT_EQ(parse_month_day("02-29").value(), (MonthDay{2, 29}));
  EXPECT_EQ(iso(MonthDay{3, 9}), "03-09");
  for (const char* text : {"02-30", "13-01", "00-10", "2-29", "02/29", ""}) {
    ASSERT_FALSE(parse_month_day(text)) << text;
    EXPECT_EQ(parse_month_day(text).error().code, "not_a_month_day");
  }
}

TEST(Period, HoldsBothItsEnds) {
  const Period year = calendar_year(2024);
  EXPECT_EQ(year.days(), 366);
  EXPECT_TRUE(year.holds(day(2024, 1, 1)));
  EXPECT_TRUE(year.holds(day(2024, 12, 31)));
  EXPECT_FALSE(year.holds(day(2025, 1, 1)));
}

} // namespace
