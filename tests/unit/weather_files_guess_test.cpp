#include "unit/weather_files_given.h"

namespace baize::weather_files {
namespace {

using testing::ElementsAre;

services::WeatherMapping guessed(const std::string& content) {
  const auto mapping = Reader().guess(content);
  EXPECT_TRUE(mapping) << units::sentence(mapping.error());
  return mapping.value_or(services::WeatherMapping{});
}

TEST(GuessDates, ADayAboveTwelveProvesTheOrder) {
  const std::string rows = "Date,Tmin,Tmax\n";
  EXPECT_EQ(guessed(rows + "04/01/2003,1,9\n13/01/2003,1,9\n").date_style, "day_month_year");
  EXPECT_EQ(guessed(rows + "01/04/2003,1,9\n01/13/2003,1,9\n").date_style, "month_day_year");
  EXPECT_EQ(guessed(rows + "20030104,1,9\n").date_style, "yyyymmdd");
  EXPECT_EQ(guessed(rows + "2003/01/04,1,9\n").date_style, "iso");
  EXPECT_EQ(guessed(rows + "2003-01-04T00:00,1,9\n").date_style, "iso");
}

TEST(GuessDates, WithoutProofTheUserIsAsked) {
  const std::string content = "Date,Tmin,Tmax\n04.01.2003,1,9\n05.01.2003,1,9\n";
  EXPECT_EQ(guessed(content).date_style, "unknown");
  const auto refused = read_with(content);
  ASSERT_THAT(codes(refused.problems), ElementsAre("date_order_not_known"));
  EXPECT_EQ(units::sentence(refused.problems[0]),
            "line 1: date is 'unknown', but must be stated by you: date=day_month_year or "
            "date=month_day_year, since no day in the file proves the order.");
  EXPECT_TRUE(refused.weather.empty());
  EXPECT_TRUE(read_with(content, {"date=day_month_year"}).weather.contains(on("2003-01-04")));
  EXPECT_TRUE(read_with(content, {"date=month_day_year"}).weather.contains(on("2003-04-01")));
}

TEST(GuessDates, ProofBothWaysIsNoProof) {
  const std::string content = "Date,Tmin,Tmax\n13/01/2003,1,9\n01/14/2003,1,9\n";
  EXPECT_EQ(guessed(content).date_style, "unknown");
}

TEST(GuessDelimiter, TabCommaSemicolonSpaceBar) {
  for (const char mark : {'\t', ',', ';', ' ', '|'}) {
    const std::string m(1, mark);
    const auto mapping =
        guessed("date" + m + "tmin" + m + "tmax\n2003-01-04" + m + "1" + m + "9\n");
    EXPECT_EQ(mapping.delimiter, mark);
  }
}

TEST(GuessDelimiter, DecimalCommasBetweenSemicolons) {
  const auto mapping = guessed("Datum;Tmin;Tmax;Niederschlag\n2003-01-04;1,5;9;0,2\n");
  EXPECT_EQ(mapping.delimiter, ';');
  EXPECT_EQ(mapping.decimal, ',');
  EXPECT_EQ(mapping.columns.at("rain_mm"), "Niederschlag");
}

TEST(GuessHeader, MayStandBelowOtherLines) {
  const auto mapping = guessed("Invented station, 12 m above the sea\n\n"
                               "Date,MinTemp,MaxTemp,Rainfall amount (millimetres)\n"
                               "2003-01-04,1,9,0.2\n");
  EXPECT_EQ(mapping.header_lines, 3);
  EXPECT_EQ(mapping.columns.at("rain_mm"), "Rainfall amount (millimetres)");
  EXPECT_EQ(mapping.unit.at("rain_mm"), "mm");
}

TEST(GuessHeader, NamesInManyHands) {
  const auto field_of = [](const std::string& header) -> std::string {
    const auto mapping = guessed("date\ttmean\t" + header + "\n2003-01-04\t5\t1\n");
    for (const auto& [field, column] : mapping.columns) {
      if (column == header) {
        return field + " " + mapping.unit.at(field);
      }
    }
    return "";
  };
  EXPECT_EQ(field_of("Minimum temperature (Degree C)"), "tmin_c C");
  EXPECT_EQ(field_of("temperature_2m_max (°C)"), "tmax_c C");
  EXPECT_EQ(field_of("MAX_TEMP_F"), "tmax_c F");
  EXPECT_EQ(field_of("Precip_in"), "rain_mm in");
  EXPECT_EQ(field_of("precipitation_sum (mm)"), "rain_mm mm");
  EXPECT_EQ(field_of("Solar radiation (MJ m-2 d-1)"), "solar_mj_m2 MJ/m2");
  EXPECT_EQ(field_of("Wind speed (km/h)"), "wind_m_s km/h");
  EXPECT_EQ(field_of("RHmax (%)"), "humidity_max_pct %");
  EXPECT_EQ(field_of("ReferenceET"), "et0_mm mm");
  EXPECT_EQ(field_of("Dew point [C]"), "dew_point_c C");
  EXPECT_EQ(field_of("Snow depth (cm)"), "");
  EXPECT_EQ(field_of("pan evaporation (mm)"), "");
}

TEST(GuessHeader, TheHeightOfTheWindIsTakenFromItsName) {
  EXPECT_EQ(guessed("date,tmin,tmax,wind_10m\n2003-01-04,1,9,3\n").wind_height_m, 10.0);
  EXPECT_EQ(guessed("date,tmin,tmax,u2\n2003-01-04,1,9,3\n").wind_height_m, 2.0);
  EXPECT_FALSE(guessed("date,tmin,tmax,wind\n2003-01-04,1,9,3\n").wind_height_m);
}

TEST(GuessUnits, WhatNeitherHeaderNorValuesTellIsAsked) {
  // 78 can be degrees F or tenths of a degree C.
  const std::string content = "date,tmin,tmax\n2003-01-04,50,78\n";
  EXPECT_EQ(guessed(content).unit.at("tmax_c"), "unknown");
  const auto refused = read_with(content);
  ASSERT_THAT(codes(refused.problems), ElementsAre("unit_not_known"));
  EXPECT_EQ(refused.problems[0].field, "unit.tmax_c");
  const auto day =
      read_with(content, {"unit.tmax_c=F", "unit.tmin_c=F"}).weather.at(on("2003-01-04"));
  EXPECT_EQ(day.tmin_c, 10.0);
}

TEST(GuessUnits, RainBesideFahrenheitIsAskedFor) {
  const auto mapping = guessed("date,tmin_f,tmax_f,rain\n2003-01-04,50,78,1\n");
  EXPECT_EQ(mapping.unit.at("rain_mm"), "unknown");
  EXPECT_EQ(mapping.unit.at("tmin_c"), "F");
}

TEST(GuessUnits, AUnitNobodyKnowsIsAskedFor) {
  EXPECT_EQ(guessed("date,tmin,tmax,rain (barleycorn)\n2003-01-04,1,9,3\n").unit.at("rain_mm"),
            "unknown");
}

TEST(GuessUnits, HumidityAsAShareIsAskedFor) {
  EXPECT_EQ(guessed("date,tmin,tmax,rhmax\n2003-01-04,1,9,0.8\n").unit.at("humidity_max_pct"),
            "unknown");
}

TEST(GuessRefuses, WithoutATemperatureOrADate) {
  const auto no_temperature = Reader().guess("date,rain\n2003-01-04,1\n");
  ASSERT_FALSE(no_temperature);
  EXPECT_EQ(no_temperature.error().code, "not_a_weather_file");
  EXPECT_NE(no_temperature.error().rule.find("temperature"), std::string::npos);
  const auto no_date = Reader().guess("station,tmin,tmax\na,1,2\n");
  ASSERT_FALSE(no_date);
  EXPECT_NE(no_date.error().rule.find("no column of dates"), std::string::npos);
  const auto words = Reader().guess("date,tmin,tmax\nyesterday,1,2\n");
  ASSERT_FALSE(words);
  EXPECT_NE(words.error().rule.find("no dates"), std::string::npos);
  EXPECT_FALSE(Reader().guess(""));
  EXPECT_FALSE(Reader().guess("\n\n"));
}

TEST(GuessRefuses, TwoDigitYears) {
  EXPECT_FALSE(Reader().guess("date,tmin,tmax\n13/01/03,1,2\n"));
}

} // namespace
} // namespace baize::weather_files
