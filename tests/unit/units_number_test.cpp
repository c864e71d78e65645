#include "baize/units/number.h"

#include <gtest/gtest.h>

#include <limits>

namespace {

using namespace baize::units;

TEST(Number, ReadsPlainDecimals) {
  EXPECT_EQ(parse_number("7.5").value(), 7.5);
  EXPECT_EQ(parse_number("-0.25").value(), -0.25);
  EXPECT_EQ(parse_number(".5").value(), 0.5);
  EXPECT_EQ(parse_number("7,5", ',').value(), 7.5);
  EXPECT_EQ(parse_number("007").value(), 7);
}

TEST(Number, RefusesTheRest) {
  for (const char* text : {"", "-", ".", "7.", "1e3", "+7", " 7", "7 ", "1.000,5", "7,5", "0x10",
                           "nan", "inf", "--7", "1.2.3", "７"}) {
    const auto read = parse_number(text);
    ASSERT_FALSE(read) << text;
    EXPECT_EQ(read.error().code, "not_a_number");
  }
  EXPECT_FALSE(parse_number("7.5", ',')) << "a full stop is no decimal comma";
  EXPECT_FALSE(parse_number(std::string(400, '9'))) << "beyond any double";
  EXPECT_EQ(parse_number("0." + std::string(400, '0') + "1").value(), 0) << "too small to hold";
}

TEST(Number, WholeNumbersAreWhole) {
  EXPECT_EQ(parse_whole("10").value(), 10);
  EXPECT_EQ(parse_whole("-3").value(), -3);
  for (const char* text : {"7.5", "7,0", "", "+7", " 7", "99999999999", "7x"}) {
    ASSERT_FALSE(parse_whole(text)) << text;
    EXPECT_EQ(parse_whole(text).error().code, "not_a_whole_number");
  }
}

TEST(Number, WritesTheShortest) {
  EXPECT_EQ(write_number(0.1), "0.1");
  EXPECT_EQ(write_number(7), "7");
  EXPECT_EQ(write_number(-2.5, ','), "-2,5");
  EXPECT_EQ(write_number(1e21), "1000000000000000000000");
  EXPECT_EQ(write_number(-0.0), "0");
  EXPECT_EQ(write_number(std::numeric_limits<double>::denorm_min()).size(), 326U)
      << "0., 323 noughts and a 5";
}

TEST(Number, ShowsHalfAwayFromZero) {
  EXPECT_EQ(show_number(2.675, 2), "2.68") << "the double nearest to 2.675 is below it";
  EXPECT_EQ(show_number(0.5, 0), "1");
  EXPECT_EQ(show_number(1.5, 0), "2");
  EXPECT_EQ(show_number(2.5, 0), "3");
  EXPECT_EQ(show_number(-2.5, 0), "-3");
  EXPECT_EQ(show_number(9.995, 2), "10.00");
  EXPECT_EQ(show_number(8, 1), "8.0");
  EXPECT_EQ(show_number(7.25, 1, ','), "7,3");
}

TEST(Number, ShowsNoMinusBeforeNothing) {
  EXPECT_EQ(show_number(-0.004, 2), "0.00");
  EXPECT_EQ(show_number(-0.4, 0), "0");
}

TEST(Problem, IsOneSentence) {
  const Problem problem{"score_out_of_range", "score", "11", "a whole number from 1 to 10",
                        "rolls.csv line 12"};
  EXPECT_EQ(sentence(problem),
            "rolls.csv line 12: score is '11', but must be a whole number from 1 to 10.");
  EXPECT_EQ(sentence({"missing_id", "id", "", "given", ""}), "id is missing, but must be given.");
  EXPECT_EQ(sentence(parse_whole("7.5").error()),
            "the value is '7.5', but must be a whole number.");
  EXPECT_EQ(
      remark_sentence({"score_against_marks", "score", "7", "8 by the marks of the roll", ""}),
      "score is '7'; expected 8 by the marks of the roll.");
}

} // namespace
