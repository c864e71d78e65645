#include "baize/units/length.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace baize::units;

TEST(Length, FootAndInchAreExact) {
  // International foot of 1959: 0.3048 m; inch 25.4 mm.
  EXPECT_DOUBLE_EQ(from_feet(1).metres, 0.3048);
  EXPECT_DOUBLE_EQ(from_inches(12).metres, from_feet(1).metres);
  EXPECT_DOUBLE_EQ(centimetres(from_inches(8)), 20.32);
  EXPECT_DOUBLE_EQ(centimetres(from_inches(18)), 45.72);
}

TEST(Length, ReadsFeetAndInches) {
  const struct {
    const char* text;
    double inches;
  } cases[] = {{"9'6\"", 114}, {"9' 6.5\"", 114.5}, {"9-6", 114},     {"9'", 108},
               {"0'0\"", 0},   {"10'11\"", 131},    {"9'.5\"", 108.5}};
  for (const auto& one : cases) {
    const auto read = parse_length(one.text, LengthUnit::foot_inch);
    ASSERT_TRUE(read) << one.text;
    EXPECT_DOUBLE_EQ(read->metres, one.inches * 0.0254) << one.text;
  }
  EXPECT_DOUBLE_EQ(parse_length("9'6,5\"", LengthUnit::foot_inch, ',')->metres, 114.5 * 0.0254);
}

TEST(Length, RefusesWhatIsNoLength) {
  for (const char* text : {"9'12\"", "9-12", "9.5", "-9'6\"", "9'-6\"", "9'6''", "9", "'6\"", "",
                           "9-", "9'  6\"", "9' \"", "nine feet", "9'6\"x"}) {
    const auto read = parse_length(text, LengthUnit::foot_inch);
    ASSERT_FALSE(read) << text;
    EXPECT_EQ(read.error().code, "not_a_length");
    EXPECT_EQ(read.error().value, text);
  }
  for (const char* text : {"-3", "3 m", "1e3", "3,1", "nan", "inf", "3.", ""}) {
    EXPECT_FALSE(parse_length(text, LengthUnit::metre)) << text;
  }
}

TEST(Length, ReadsDecimalCommasWhereTheyAreStated) {
  EXPECT_DOUBLE_EQ(parse_length("3,11", LengthUnit::metre, ',')->metres, 3.11);
  EXPECT_FALSE(parse_length("3.11", LengthUnit::metre, ','));
}

TEST(Length, ShowsForPeople) {
  const Length l = from_centimetres(311);
  EXPECT_EQ(show(l, LengthUnit::metre), "3.11 m");
  EXPECT_EQ(show(l, LengthUnit::metre, ','), "3,11 m");
  EXPECT_EQ(show(l, LengthUnit::centimetre), "311 cm");
  EXPECT_EQ(show(l, LengthUnit::foot), "10.2 ft");
  EXPECT_EQ(show(l, LengthUnit::foot_inch), "10'2\"");
}

TEST(Length, CarriesInchesIntoFeet) {
  EXPECT_EQ(show(from_inches(119.6), LengthUnit::foot_inch), "10'0\"");
  EXPECT_EQ(show(from_inches(114.5), LengthUnit::foot_inch), "9'7\"");
  EXPECT_EQ(show(from_inches(-6), LengthUnit::foot_inch), "-0'6\"");
  EXPECT_EQ(show(from_inches(-0.2), LengthUnit::foot_inch), "0'0\"");
}

TEST(Length, RoundsAsOnPaper) {
  // 3.115 m is 311.5 cm, though 3.115 * 100 is a little less in binary.
  EXPECT_EQ(show(from_metres(3.115), LengthUnit::centimetre), "312 cm");
  EXPECT_EQ(show(from_metres(3.115), LengthUnit::metre), "3.12 m");
}

TEST(LengthUnit, NamesReadBack) {
  for (const LengthUnit unit :
       {LengthUnit::metre, LengthUnit::centimetre, LengthUnit::foot, LengthUnit::foot_inch}) {
    EXPECT_EQ(parse_length_unit(name(unit)).value(), unit);
  }
  EXPECT_EQ(parse_length_unit("yd").error().code, "no_such_unit");
}

} // namespace
