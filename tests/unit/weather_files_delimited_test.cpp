#include "baize/units/number.h"
#include "unit/weather_files_given.h"

#include <rapidcheck.h>

namespace baize::weather_files {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

TEST(DelimitedRemarks, AGapIsOneRangeAndNothingIsFilled) {
  const auto reading = read_with("date,tmin,tmax\n2003-01-03,1,9\n2003-01-20,2,8\n");
  EXPECT_THAT(sentences(reading.remarks),
              ElementsAre("2003-01-04 to 2003-01-19: row is missing, but must be one for every "
                          "day; nothing is filled in."));
  EXPECT_EQ(reading.weather.size(), 2U);
}

TEST(DelimitedRemarks, AMissingValueIsNotZero) {
  const auto reading =
      read_with("date,tmin,tmax,rain\n2003-01-03,1,9,NA\n2003-01-04,1,9,\n2003-01-05,1,9,0\n");
  EXPECT_THAT(sentences(reading.remarks),
              ElementsAre("2003-01-03 to 2003-01-04: rain_mm is missing, but must be given for "
                          "every day; nothing is filled in."));
  EXPECT_FALSE(reading.weather.at(on("2003-01-04")).rain_mm);
  EXPECT_EQ(reading.weather.at(on("2003-01-05")).rain_mm, 0.0);
}

TEST(DelimitedRemarks, SwappedTemperaturesAreLeftOutNotTurnedRound) {
  const auto reading = read_with("date,tmin,tmax,rain\n2003-01-03,9,1,2\n");
  EXPECT_THAT(sentences(reading.remarks),
              ElementsAre("2003-01-03: tmin_c and tmax_c is '9 and 1', but must be the lower one "
                          "first; both are left out."));
  const auto& day = reading.weather.at(on("2003-01-03"));
  EXPECT_FALSE(day.tmin_c);
  EXPECT_FALSE(day.tmax_c);
  EXPECT_EQ(day.rain_mm, 2.0);
}

TEST(DelimitedRemarks, ImpossibleValuesAreLeftOutAndSaid) {
  const auto reading = read_with("date,tmin_c,tmax_c,rain_mm\n2003-01-03,-91,61,-0.1\n"
                                 "2003-01-04,-90,60,2000\n2003-01-05,1,2,2000.1\n");
  EXPECT_THAT(sentences(reading.remarks),
              ElementsAre("2003-01-03: tmin_c is '-91', but must be -90 to 60 C; the value is left "
                          "out.",
                          "2003-01-03: tmax_c is '61', but must be -90 to 60 C; the value is left "
                          "out.",
                          "2003-01-03: rain_mm is '-0.1', but must be 0 to 2000 mm; the value is "
                          "left out.",
                          "2003-01-05: rain_mm is '2000.1', but must be 0 to 2000 mm; the value is "
                          "left out."));
  EXPECT_FALSE(reading.weather.contains(on("2003-01-03"))); // nothing of it was left
  EXPECT_EQ(reading.weather.at(on("2003-01-04")).rain_mm, 2000.0);
}

TEST(DelimitedRemarks, ARunOfOneRemarkShowsItsFirstValues) {
  std::string content = "date,tmin,tmax,rain\n";
  for (int d = 1; d <= 9; ++d) {
    content += "2003-01-0" + std::to_string(d) + ",1,9,-" + std::to_string(d) + "\n";
  }
  EXPECT_THAT(sentences(read_with(content).remarks),
              ElementsAre("2003-01-01 to 2003-01-09: rain_mm is '-1, -2, -3, ...', but must be 0 "
                          "to 2000 mm; the value is left out."));
}

TEST(DelimitedRemarks, TheSameDayTwice) {
  const auto reading = read_with("date,tmin,tmax,rain\n2003-01-03,1,9,2\n2003-01-03,1,9,2\n"
                                 "2003-01-04,1,9,2\n2003-01-04,1,9,3.5\n2003-01-04,1,9,4\n");
  EXPECT_THAT(sentences(reading.remarks),
              ElementsAre("2003-01-03: day is 'given twice', but must be given once; the second "
                          "row says the same and is left out.",
                          "2003-01-04: rain_mm is '2 and 3.5', but must be given once; the first "
                          "is kept, the second left out."));
  EXPECT_EQ(reading.weather.at(on("2003-01-04")).rain_mm, 2.0);
  EXPECT_EQ(reading.rows, 5);
}

TEST(DelimitedRemarks, WordsInANumbersPlace) {
  const auto reading = read_with("date,tmin,tmax\n2003-01-03,1,hot\n2003-01-04,1.2.3,9\n");
  EXPECT_THAT(codes(reading.remarks), ElementsAre("unreadable", "unreadable"));
  EXPECT_EQ(reading.remarks[0].value, "hot");
  EXPECT_FALSE(reading.weather.at(on("2003-01-03")).tmax_c);
}

TEST(DelimitedRemarks, ATraceIsRainThatWasSeen) {
  const auto reading = read_with("date,tmin,tmax,rain\n2003-01-03,1,9,T\n2003-01-04,1,9,trace\n");
  EXPECT_THAT(reading.remarks, IsEmpty());
  EXPECT_TRUE(reading.weather.at(on("2003-01-03")).rain_trace);
  EXPECT_EQ(reading.weather.at(on("2003-01-04")).rain_mm, 0.0);
}

TEST(DelimitedRows, ADayThatDoesNotExistIsNamedByLine) {
  const auto reading =
      read_with("date,tmin,tmax\n2003-02-28,1,9\n2003-02-29,1,9\n2003-03-01,1,9\n");
  EXPECT_THAT(sentences(reading.remarks),
              ElementsAre("line 3: day is '2003-02-29', but must be a day that exists, written as "
                          "iso; the row is left out."));
}

TEST(DelimitedRows, MoreCellsThanTheHeaderWouldShiftTheColumns) {
  // Decimal commas in a comma-separated file.
  const auto reading =
      read_with("date,tmin,tmax\n2003-01-03,1,9\n2003-01-04,1,5,9,5\n2003-01-05,1,9\n");
  ASSERT_THAT(codes(reading.remarks), ElementsAre("cells", "no_row"));
  EXPECT_EQ(reading.remarks[0].place, "line 3");
}

TEST(DelimitedRows, EmptyCellsAtTheEndCarryNothing) {
  const auto reading = read_with("date,tmin,tmax\n2003-01-03,1,9,,\n2003-01-04,1,9\n");
  EXPECT_THAT(reading.remarks, IsEmpty());
}

TEST(DelimitedRows, ACutLastLineIsLeftOut) {
  const auto reading = read_with("date,tmin,tmax\n2003-01-03,1,9\n2003-01-04,1");
  EXPECT_THAT(sentences(reading.remarks),
              ElementsAre("line 3: line is '2 cells', but must be 3 cells, as the first line has; "
                          "the row is left out."));
  EXPECT_EQ(reading.remarks[0].code, "cut_short");
  EXPECT_EQ(reading.weather.size(), 1U);
}

TEST(DelimitedRows, AWholeLastLineWithoutItsEndIsKeptAndPointedOut) {
  const auto reading = read_with("date,tmin,tmax\n2003-01-03,1,9\n2003-01-04,1,8");
  EXPECT_THAT(codes(reading.remarks), ElementsAre("no_line_end"));
  EXPECT_EQ(reading.weather.at(on("2003-01-04")).tmax_c, 8.0);
}

TEST(DelimitedRows, MostlyUnreadableRowsAreAProblem) {
  const std::string content = "date,tmin,tmax\n2003-01-03,1,9\n2003-01-04,1,9\n";
  const auto reading = read_with(content, {"date=day_month_year"});
  EXPECT_THAT(codes(reading.problems), ElementsAre("rows_not_read"));
  EXPECT_TRUE(reading.weather.empty());
  EXPECT_THAT(codes(reading.remarks), ElementsAre("no_such_day"));
  EXPECT_EQ(reading.remarks[0].place, "line 2 to 3");
}

TEST(DelimitedRows, OrderOfRowsChangesNothing) {
  const auto up = read_with("date,tmin,tmax\n2003-01-03,1,9\n2003-01-04,2,8\n");
  const auto down = read_with("date,tmin,tmax\n2003-01-04,2,8\n2003-01-03,1,9\n");
  EXPECT_EQ(up.weather, down.weather);
  EXPECT_EQ(up.remarks, down.remarks);
}

TEST(DelimitedUnits, FahrenheitInchesAndMiles) {
  const auto reading =
      read_with("Date,Tmin (°F),Tmax [F],Rain_in,Wind (mph)\n2003-01-03,32,50,1,10\n");
  const auto& day = reading.weather.at(on("2003-01-03"));
  EXPECT_EQ(day.tmin_c, 0.0);
  EXPECT_EQ(day.tmax_c, 10.0);
  EXPECT_EQ(day.rain_mm, 25.4);
  EXPECT_DOUBLE_EQ(*day.wind_m_s, 4.4704); // 1 mile = 1609.344 m by definition
  EXPECT_FALSE(day.wind_height_m);
}

TEST(DelimitedUnits, RadiationAsMeanPower) {
  // 1 W over a day is 86 400 J (definition).
  const auto reading = read_with("date,tmin,tmax,solar radiation (W/m2)\n2003-06-03,10,20,250\n");
  EXPECT_DOUBLE_EQ(*reading.weather.at(on("2003-06-03")).solar_mj_m2, 21.6);
}

TEST(DelimitedUnits, ScaleIsExactInTenths) {
  const auto reading = read_with("date,tmin,tmax,rain\n2003-01-03,50,78,3\n",
                                 {"scale.tmin_c=0.1", "scale.tmax_c=0.1", "scale.rain_mm=0.1",
                                  "unit.tmax_c=C", "unit.tmin_c=C"});
  const auto& day = reading.weather.at(on("2003-01-03"));
  EXPECT_EQ(day.tmax_c, 7.8);
  EXPECT_EQ(day.rain_mm, 0.3);
}

TEST(DelimitedColumns, ByNumberWithoutAHeader) {
  services::WeatherMapping mapping;
  mapping = *corrected(mapping, {"format=delimited", "delimiter=space", "header_lines=0",
                                 "date=three_columns", "year=#1", "month=#2", "day=#3", "tmin_c=#4",
                                 "tmax_c=#5"});
  const auto reading = Reader().read("2003 1 3   1.5  9\n2003 1 4   2.5  8\n", mapping);
  EXPECT_THAT(reading.problems, IsEmpty());
  EXPECT_THAT(reading.remarks, IsEmpty());
  EXPECT_EQ(reading.rows, 2);
  EXPECT_EQ(reading.weather.at(on("2003-01-04")).tmin_c, 2.5);
}

TEST(DelimitedColumns, AColumnThatIsNotThere) {
  for (const char* wrong : {"rain_mm=Regn", "rain_mm=#4", "rain_mm=#0", "rain_mm=#x"}) {
    const auto reading = read_with("date,tmin,tmax\n2003-01-03,1,9\n", {wrong});
    ASSERT_THAT(codes(reading.problems), ElementsAre("no_such_column")) << wrong;
    EXPECT_EQ(reading.problems[0].place, "line 1");
    EXPECT_TRUE(reading.weather.empty());
  }
}

TEST(DelimitedColumns, QuotedCellsMayHoldTheDelimiter) {
  const auto reading = read_with("\"date\",\"tmin\",\"tmax\",\"note\"\n"
                                 "\"2003-01-03\",\"1\",\"9\",\"cold, \"\"grey\"\" day\"\n");
  EXPECT_THAT(reading.remarks, IsEmpty());
  EXPECT_EQ(reading.weather.size(), 1U);
}

TEST(Bytes, ByteOrderMarkAndCarriageReturnsAreNoPartOfTheText) {
  const auto reading = read_with("\xEF\xBB\xBF"
                                 "date;tmin;tmax\r\n2003-01-03;1,5;9\r\n");
  EXPECT_THAT(reading.remarks, IsEmpty());
  EXPECT_EQ(reading.weather.at(on("2003-01-03")).tmin_c, 1.5);
}

TEST(Bytes, Utf16AndNulBytesAreOneClearProblem) {
  const Reader reader;
  const std::string utf16("\xFF\xFE"
                          "d\0a\0",
                          6);
  const std::string nul("date,tmin\0", 10);
  for (const std::string& content : {utf16, nul}) {
    const auto guessed = reader.guess(content);
    ASSERT_FALSE(guessed);
    EXPECT_EQ(guessed.error().code, "not_text");
    EXPECT_THAT(codes(reader.read(content, {}).problems), ElementsAre("not_text"));
  }
}

TEST(Bytes, AFileOver64MBIsRefused) {
  const std::string large(std::size_t{64} * 1024 * 1024 + 1, '\n');
  ASSERT_FALSE(Reader().guess(large));
  EXPECT_EQ(Reader().guess(large).error().code, "file_too_large");
  EXPECT_THAT(codes(Reader().read(large, {}).problems), ElementsAre("file_too_large"));
}

TEST(Bytes, ManyBadLinesAreCountedNotListed) {
  std::string content = "date,tmin,tmax\n";
  for (int i = 0; i < 3000; ++i) {
    content += "2003-01-03,1,9\n2003-02-30,1,9\nx,y\n";
  }
  // Nothing to guess from: most of its dates are none.
  const auto mapping =
      corrected({}, {"format=delimited", "date=iso", "day=date", "tmin_c=tmin", "tmax_c=tmax"});
  const auto reading = Reader().read(content, *mapping);
  EXPECT_THAT(codes(reading.problems), ElementsAre("rows_not_read"));
  ASSERT_EQ(reading.remarks.size(), 1001U);
  EXPECT_EQ(reading.remarks.back().code, "more_lines");
  EXPECT_EQ(reading.remarks.back().value, "5000 more lines like these");
}

TEST(Delimited, WhatIsWrittenIsReadBack) {
  rc::check([] {
    const bool comma = *rc::gen::arbitrary<bool>();
    const char decimal = comma ? ',' : '.';
    std::string content = "date;tmin;tmax;rain\n";
    climate::Weather wanted;
    const int days = *rc::gen::inRange(1, 40);
    for (int i = 0; i < days; ++i) {
      climate::WeatherDay day;
      day.day = on("2020-02-20") + i;
      day.tmin_c = *rc::gen::inRange(-200, 200) / 10.0;
      day.tmax_c = *day.tmin_c + *rc::gen::inRange(1, 200) / 8.0;
      day.rain_mm = *rc::gen::inRange(0, 900) / 10.0 + 0.05;
      wanted[day.day] = day;
      content += units::iso(day.day) + ";" + units::write_number(*day.tmin_c, decimal) + ";" +
                 units::write_number(*day.tmax_c, decimal) + ";" +
                 units::write_number(*day.rain_mm, decimal) + "\n";
    }
    const Reader reader;
    const auto mapping = reader.guess(content);
    RC_ASSERT(mapping.has_value());
    RC_ASSERT(mapping->decimal == decimal);
    const auto reading = reader.read(content, *mapping);
    RC_ASSERT(reading.remarks.empty());
    RC_ASSERT(reading.weather == wanted);
  });
}

} // namespace
} // namespace baize::weather_files
