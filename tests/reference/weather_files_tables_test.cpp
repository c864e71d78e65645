// Genuine daily tables (see data/SOURCES.md: a public crop-model repository's
// climate examples, Apache-2.0, whose headers differ on purpose; a desert
// station, CC0): guessed right and read whole, against a count and sums made
// here by the plainest reading of their cells.
#include "baize/weather_files/mapping.h"
#include "baize/weather_files/reader.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <sstream>

namespace baize::weather_files {
namespace {

std::string table_bytes(const std::string& name) {
  std::ifstream in(std::string(BAIZE_SOURCE_DIR) + "/tests/reference/data/" + name,
                   std::ios::binary);
  EXPECT_TRUE(in) << name;
  return {std::istreambuf_iterator<char>(in), {}};
}

struct Table {
  const char* name;
  const char* tmin;
  const char* rain;
  const char* et0;
  const char* first;
  const char* last;
  std::size_t days;
};

class StationTable : public testing::TestWithParam<Table> {};

TEST_P(StationTable, IsGuessedRightAndReadWhole) {
  const Table table = GetParam();
  const std::string content = table_bytes(std::string("weather/") + table.name);
  const Reader reader;
  const auto mapping = reader.guess(content);
  ASSERT_TRUE(mapping);
  EXPECT_EQ(mapping->format, "delimited");
  EXPECT_EQ(mapping->delimiter, '\t');
  EXPECT_EQ(mapping->decimal, '.');
  EXPECT_EQ(mapping->header_lines, 1);
  EXPECT_EQ(mapping->date_style, "three_columns");
  EXPECT_EQ(mapping->columns.at("tmin_c"), table.tmin);
  EXPECT_EQ(mapping->columns.at("rain_mm"), table.rain);
  EXPECT_EQ(mapping->columns.at("et0_mm"), table.et0);
  EXPECT_EQ(mapping->unit.at("tmin_c"), "C");
  EXPECT_EQ(mapping->unit.at("rain_mm"), "mm");

  const auto reading = reader.read(content, *mapping);
  EXPECT_TRUE(reading.problems.empty());
  EXPECT_TRUE(reading.remarks.empty());
  EXPECT_EQ(reading.weather.size(), table.days);
  EXPECT_EQ(static_cast<std::size_t>(reading.rows), table.days);
  EXPECT_EQ(units::iso(reading.weather.begin()->first), table.first);
  EXPECT_EQ(units::iso(reading.weather.rbegin()->first), table.last);

  std::istringstream lines(content);
  std::string line;
  std::getline(lines, line);
  while (std::getline(lines, line)) {
    std::istringstream cells(line);
    int day = 0;
    int month = 0;
    int year = 0;
    double tmin = 0;
    double tmax = 0;
    double rain = 0;
    double et0 = 0;
    cells >> day >> month >> year >> tmin >> tmax >> rain >> et0;
    const auto& read = reading.weather.at(*units::make_day(year, month, day));
    ASSERT_EQ(read.tmin_c, tmin) << line;
    ASSERT_EQ(read.tmax_c, tmax) << line;
    ASSERT_EQ(read.rain_mm, rain) << line;
    ASSERT_EQ(read.et0_mm, et0) << line;
  }
}

INSTANTIATE_TEST_SUITE_P(Weather, StationTable,
                         testing::Values(Table{"brussels.txt", "Tmin(C)", "Prcp(mm)", "Et0(mm)",
                                               "1976-01-01", "2005-12-31", 10958},
                                         Table{"tunis.txt", "Tmin(C)", "Prcp(mm)", "Et0(mm)",
                                               "1979-01-01", "2002-05-31", 8552},
                                         Table{"hyderabad.txt", "MinTemp", "Precipitation",
                                               "ReferenceET", "2000-01-01", "2010-12-31", 4018}));

TEST(DesertTable, EveryColumnThatADayHasRoomFor) {
  const std::string content = table_bytes("climate/daily_weather_with_eto_desert_2003_2005.csv");
  const Reader reader;
  const auto mapping = reader.guess(content);
  ASSERT_TRUE(mapping);
  EXPECT_EQ(mapping->date_style, "iso");
  EXPECT_EQ(mapping->wind_height_m, 3.0);
  EXPECT_EQ(mapping->columns.at("solar_mj_m2"), "srad_MJ");
  EXPECT_EQ(mapping->columns.at("humidity_max_pct"), "rhmax");
  const auto reading = reader.read(content, *mapping);
  EXPECT_TRUE(reading.problems.empty());
  EXPECT_EQ(reading.weather.size(), 730U);
  ASSERT_EQ(reading.remarks.size(), 1U); // the leap year between is not in the file
  EXPECT_EQ(units::sentence(reading.remarks[0]),
            "2004-01-01 to 2004-12-31: row is missing, but must be one for every day; nothing is "
            "filled in.");
  const auto& first = reading.weather.begin()->second; // its line: 12.48,17.5,-0.5,-0.1,95.4,24.9,1
  EXPECT_EQ(first.solar_mj_m2, 12.48);
  EXPECT_EQ(first.dew_point_c, -0.1);
  EXPECT_EQ(first.humidity_min_pct, 24.9);
  EXPECT_EQ(first.wind_m_s, 1.0);
  EXPECT_EQ(first.wind_height_m, 3.0);
}

} // namespace
} // namespace baize::weather_files
