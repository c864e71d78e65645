#include "unit/weather_files_given.h"

#include <rapidcheck.h>

namespace baize::weather_files {
namespace {

using services::WeatherMapping;
using testing::ElementsAre;

TEST(MappingText, IsShownAsLines) {
  const auto mapping = Reader().guess("Date;Tmin(C);Rain\n13.01.2003;1,5;0,2\n");
  ASSERT_TRUE(mapping);
  EXPECT_THAT(show(*mapping),
              ElementsAre("format=delimited", "delimiter=semicolon", "decimal=,", "header_lines=1",
                          "date=day_month_year", "day=Date", "rain_mm=Rain", "tmin_c=Tmin(C)",
                          "unit.rain_mm=mm", "unit.tmin_c=C"));
}

TEST(MappingText, WhatIsShownCanBeGivenBack) {
  rc::check([] {
    WeatherMapping mapping;
    mapping.format = *rc::gen::element<std::string>("ghcn_dly", "ghcn_wide", "delimited");
    mapping.delimiter = *rc::gen::element('\t', ',', ';', '|', ' ');
    mapping.decimal = *rc::gen::element('.', ',');
    mapping.header_lines = *rc::gen::inRange(0, 9);
    mapping.date_style = *rc::gen::element<std::string>("iso", "unknown", "three_columns");
    if (*rc::gen::arbitrary<bool>()) {
      mapping.wind_height_m = 10;
    }
    for (const char* field : {"tmin_c", "rain_mm", "day"}) {
      if (*rc::gen::arbitrary<bool>()) {
        mapping.columns[field] = *rc::gen::element<std::string>("A=B", "#3", "Tmin (C)", " x ");
        if (std::string(field) != "day") {
          mapping.unit[field] = std::string(field) == "tmin_c" ? "F" : "in";
          mapping.scale[field] = *rc::gen::element(0.1, 10.0, 0.3048);
        }
      }
    }
    const auto back = corrected(WeatherMapping{}, show(mapping));
    RC_ASSERT(back.has_value());
    RC_ASSERT(*back == mapping);
  });
}

TEST(Corrections, ChangeOneThingEach) {
  WeatherMapping mapping;
  mapping.columns["rain_mm"] = "Rain";
  mapping.unit["rain_mm"] = "in";
  const auto better = corrected(mapping, {"decimal=,", "delimiter=tab", "date=month_day_year",
                                          "rain_mm=", "tmin_c=Low", "unit.tmin_c=F",
                                          "scale.tmax_c=0.1", "wind_height_m=10"});
  ASSERT_TRUE(better);
  EXPECT_EQ(better->decimal, ',');
  EXPECT_EQ(better->delimiter, '\t');
  EXPECT_EQ(better->date_style, "month_day_year");
  EXPECT_FALSE(better->columns.contains("rain_mm"));
  EXPECT_FALSE(better->unit.contains("rain_mm"));
  EXPECT_EQ(better->columns.at("tmin_c"), "Low");
  EXPECT_EQ(better->unit.at("tmin_c"), "F");
  EXPECT_EQ(better->scale.at("tmax_c"), 0.1);
  EXPECT_EQ(better->wind_height_m, 10.0);
}

TEST(Corrections, AreRefusedWithTheRule) {
  const auto refusal = [](const std::string& correction) {
    const auto result = corrected(WeatherMapping{}, {correction});
    EXPECT_FALSE(result) << correction;
    return result ? std::string() : units::sentence(result.error());
  };
  EXPECT_EQ(refusal("decimal=;"), "decimal is ';', but must be a point or a comma.");
  EXPECT_EQ(refusal("unit.rain_mm=F"), "unit.rain_mm is 'F', but must be one of mm, cm, in.");
  EXPECT_EQ(refusal("scale.rain_mm=0"),
            "scale.rain_mm is '0', but must be a factor above zero, such as 0.1.");
  EXPECT_EQ(refusal("rain"),
            "setting is 'rain', but must be written as name=value, e.g. tmin_c=MinTemp.");
  EXPECT_EQ(refusal("header_lines=-1"),
            "header_lines is '-1', but must be a whole number from 0 to 1000.");
  for (const char* wrong : {"regn=Col", "scale.day=2", "unit.=C", "date=dmy", "format=xml",
                            "delimiter=::", "wind_height_m=0"}) {
    refusal(wrong);
  }
}

TEST(Corrections, KeepTheFirstMappingWhenOneIsRefused) {
  // The caller's mapping is a copy: nothing is half changed.
  WeatherMapping mapping;
  EXPECT_FALSE(corrected(mapping, {"decimal=,", "date=dmy"}));
  EXPECT_EQ(mapping, WeatherMapping{});
}

} // namespace
} // namespace baize::weather_files
