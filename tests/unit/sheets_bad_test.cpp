// Bad input: each mistake is told in exactly one clear sentence with its place.
#include "baize/sheets/csv.h"
#include "unit/sheets_files.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace baize;
using namespace sheets_test;
using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

std::vector<std::string> told(const Files& files) {
  return sentences(read(files).problems);
}

std::vector<std::string> told_of_rolls(const std::string& rows) {
  return told(small_club_with_rolls(rows));
}

TEST(SheetsBad, OtherEncoding) {
  EXPECT_THAT(told(club("awkward_encoding")),
              ElementsAre("visits.csv line 2 byte 66: text is 'byte 0xFC', but must be UTF-8 text; "
                          "save the sheet again as CSV in UTF-8."));
  EXPECT_THAT(told(small_club_with("visits.csv", std::string("\xFF\xFE"
                                                             "d\0a\0y\0",
                                                             8))),
              ElementsAre(AllOf(StartsWith("visits.csv line 1 byte 1: text is 'UTF-16'"))));
}

TEST(SheetsBad, QuoteNeverClosed) {
  EXPECT_THAT(told(club("awkward_quote")),
              ElementsAre("visits.csv line 2: cell is '\"dew, then sun', but must be closed by a "
                          "quote of its own before the file ends."));
}

TEST(SheetsBad, CutOff) {
  EXPECT_THAT(told(club("awkward_cut_off")),
              ElementsAre("rolls.csv line 3: number of cells is '9', but must be 11, as in the "
                          "header line; the file seems to be cut off here."));
}

TEST(SheetsBad, TooLarge) {
  const Files files = small_club_with("rolls.csv", std::string(sheets::kLargestFile + 1, 'x'));
  EXPECT_THAT(told(files),
              ElementsAre("rolls.csv: size is '134217729 bytes', but must be at most 134217728 "
                          "bytes (128 MiB); split the file by year."));
}

TEST(SheetsBad, ValuesOutOfRange) {
  const auto reading = read(club("awkward_values"));
  EXPECT_THAT(
      sentences(reading.problems),
      testing::UnorderedElementsAre(
          "rolls.csv line 2 column day: day is '2027-04-03', but must be today (2026-05-31) or "
          "before.",
          "rolls.csv line 3 column distance_m: distance is '0', but must be a number above 0 and "
          "up to 30 m.",
          "rolls.csv line 4 column distance_m: distance is '90', but must be a number above 0 and "
          "up to 30 m.",
          AllOf(StartsWith("rolls.csv line 6 column score: score is '11', but must be"),
                HasSubstr("from 1 to 10")),
          "rolls.csv line 7 column score: score is '7.5', but must be a whole number.",
          AllOf(StartsWith("rolls.csv line 10 column from: from is '08:20', but must be"),
                HasSubstr("at no other visit"))));
  EXPECT_THAT(sentences(reading.remarks),
              ElementsAre(StartsWith("rolls.csv line 8 column score: score is '9', but must be 1 "
                                     "to 5 by the marks of the roll")));
}

TEST(SheetsBad, FarRollIsAccepted) {
  EXPECT_THAT(told_of_rolls("2025-04-03,,,ab,1,A,out,1,9.8,,,,\n"), IsEmpty());
}

TEST(SheetsBad, UnknownColumnNamesTheNearest) {
  EXPECT_THAT(told(small_club_with("rolls.csv", "day,green,direction,roll,distanse_cm\n")),
              ElementsAre("rolls.csv line 1: column is 'distanse_cm', but must be one that this "
                          "file knows; the nearest is 'distance_cm'."));
  EXPECT_THAT(told(small_club_with("rolls.csv", "day,green,direction,roll,distance\n")),
              ElementsAre(HasSubstr("the nearest is 'distance_m'")));
  EXPECT_THAT(told(small_club_with("rolls.csv", "day,day_dmy,green,direction,roll\n")),
              ElementsAre(HasSubstr("must be there only once")));
}

TEST(SheetsBad, MissingColumnCellFileHeader) {
  EXPECT_THAT(
      told(small_club_with("rolls.csv", "day,green,roll,score\n")),
      ElementsAre("rolls.csv line 1: column direction is missing, but must be in the header "
                  "line of this file."));
  EXPECT_THAT(told_of_rolls("2025-04-03,,,ab,1,A,,1,3.1,,,,\n"),
              ElementsAre("rolls.csv line 2 column direction: direction is missing, but must be "
                          "given in every row."));
  EXPECT_THAT(told(small_club_with("rolls.csv", "")),
              ElementsAre(StartsWith("rolls.csv line 1: header line is missing")));
  Files files = small_club();
  files.erase(files.begin() + 1);
  EXPECT_THAT(told(files),
              ElementsAre("greens.csv: file is missing, but must be among the files given."));
}

TEST(SheetsBad, FileNames) {
  EXPECT_THAT(told(small_club_with("roll.csv", "")),
              ElementsAre("roll.csv: file name is 'roll.csv', but must be one of the set; the "
                          "nearest is 'rolls.csv'."));
  EXPECT_THAT(told(small_club_with("spring/WORKS.csv", "kind,day,greens\nmowing,2025-04-03,all\n")),
              IsEmpty());
}

TEST(SheetsBad, DecimalMarks) {
  const std::string head = "day;green;direction;roll;distance_m\n";
  EXPECT_THAT(
      told(small_club_with("rolls.csv", head + "2025-04-03;1;out;1;3,1\n"
                                               "2025-04-03;1;out;2;3.2\n"
                                               "2025-04-03;1;out;3;3.3\n")),
      ElementsAre("rolls.csv line 3 column distance_m: number is '3.2', but must be written "
                  "with the decimal mark ',' as on line 2."));
  EXPECT_THAT(told_of_rolls("2025-04-03,,,ab,1,A,out,1,\"3,1\",,,,\n"),
              ElementsAre("rolls.csv line 2 column distance_m: distance is '3,1', but must be a "
                          "length in metres such as 3.11."));
}

TEST(SheetsBad, DaysThatDoNotExist) {
  EXPECT_THAT(told_of_rolls("2025-02-30,,,ab,1,A,out,1,3.1,,,,\n"),
              ElementsAre(StartsWith("rolls.csv line 2 column day: day is '2025-02-30'")));
  EXPECT_THAT(told_of_rolls("3.4.2025,,,ab,1,A,out,1,3.1,,,,\n"),
              ElementsAre(HasSubstr("must be a day written YYYY-MM-DD")));
}

TEST(SheetsBad, RollsAndTotals) {
  EXPECT_THAT(told_of_rolls("2025-04-03,,,ab,1,A,out,1,3.1,,,,\n"
                            "2025-04-03,,,ab,1,A,out,1,3.2,,,,\n"),
              ElementsAre(AllOf(StartsWith("rolls.csv line 3 column roll: roll is '1'"),
                                HasSubstr("on line 2"))));
  EXPECT_THAT(told_of_rolls("2025-04-03,,,ab,1,A,out,,3.1,,,,\n"),
              ElementsAre(StartsWith("rolls.csv line 2 column roll: roll is missing")));
  EXPECT_THAT(told_of_rolls("2025-04-03,,,ab,1,A,out,1,,,,24,3\n"),
              ElementsAre(HasSubstr("a row of its own")));
  EXPECT_THAT(told_of_rolls("2025-04-03,,,ab,1,A,out,,,,,31,3\n"),
              ElementsAre(StartsWith("rolls.csv line 2 column run_total: total is '31'")));
  EXPECT_THAT(told_of_rolls("2025-04-03,,,ab,1,A,out,,,,,24,\n"),
              ElementsAre(StartsWith("rolls.csv line 2 column run_balls: total_of is missing")));
  EXPECT_THAT(told_of_rolls("2025-04-03,,,ab,1,A,out,1,3.1,-1,,,\n"),
              ElementsAre(HasSubstr("bobbles is '-1'")));
}

TEST(SheetsBad, NamesThatNothingDeclares) {
  EXPECT_THAT(told_of_rolls("2025-04-03,,,ab,9,A,out,1,3.1,,,,\n"),
              ElementsAre("rolls.csv line 2 column green: green is '9', but must be one of the "
                          "club's greens."));
  EXPECT_THAT(
      told_of_rolls("2025-04-03,,,ab,1,A,out,1,3.1,,,,\n2025-04-03,,,ab,1,Z,back,1,3.1,,,,\n"),
      ElementsAre(StartsWith("rolls.csv line 3 column spot: spot is 'Z'")));
  EXPECT_THAT(told_of_rolls("2025-04-03,,,zz,1,A,out,1,3.1,,,,\n"),
              ElementsAre(StartsWith("rolls.csv line 2 column observer: observer is 'zz'")));
}

TEST(SheetsBad, OneMistakeDoesNotBecomeMany) {
  EXPECT_THAT(told(small_club_with("greens.csv", "green,nane\n1,First\n")),
              ElementsAre(HasSubstr("the nearest is 'name'")));
  EXPECT_THAT(told_of_rolls("2025-04-03,08:10,,ab,1,A,out,x,3.1,,,,\n"
                            "2025-04-03,08:10,,ab,1,A,out,2,3.1,,,,\n"),
              ElementsAre(StartsWith("rolls.csv line 2 column roll: roll is 'x'")));
}

TEST(SheetsBad, WorksAndReadings) {
  EXPECT_THAT(told(small_club_with("works.csv", "kind,day,greens,depth_mm\n"
                                                "coring,2025-04-03,1,900\n")),
              ElementsAre(StartsWith("works.csv line 2 column depth_mm: depth is '900'")));
  EXPECT_THAT(told(small_club_with("works.csv", "kind,day,greens\nmowing,2025-04-03,1\n"
                                                "mowing,2025-04-03,1\n")),
              ElementsAre(AllOf(StartsWith("works.csv line 3: id is '2025-04-03/mowing/1'"),
                                HasSubstr("works.csv line 2"))));
  EXPECT_THAT(told(small_club_with("readings.csv", "day,green,kind,value,unit\n"
                                                   "2025-04-03,1,height_of_cut,0.15,in\n")),
              ElementsAre("readings.csv line 2 column unit: unit is 'in', but must be 'mm' for "
                          "height_of_cut, or empty."));
}

TEST(SheetsBad, ConditionsAreToldInVisits) {
  EXPECT_THAT(told(small_club_with("visits.csv", "day,from,observer,green,dew\n"
                                                 "2025-04-03,08:10,ab,1,much\n")),
              ElementsAre(StartsWith("visits.csv line 2 column dew: dew is 'much'")));
  EXPECT_THAT(told(small_club_with("visits.csv", "day,from,observer,green,dew\n"
                                                 "2025-04-04,08:10,ab,1,heavy\n")),
              ElementsAre(StartsWith("visits.csv line 2: runs is missing")));
}

TEST(SheetsBad, RowsOfAGreenMustAgree) {
  EXPECT_THAT(
      told(small_club_with("greens.csv", "green,area_m2,spot\n1,400,A\n1,410,B\n")),
      ElementsAre("greens.csv line 3 column area_m2: area_m2 is '410', but must be '400' as "
                  "on line 2, or empty."));
}

TEST(SheetsBad, GreenIdsThatWorksCouldNotName) {
  for (const char* id : {"all", "\"1,2\""}) {
    EXPECT_THAT(told(small_club_with("greens.csv", std::string("green\n1\n") + id + "\n")),
                ElementsAre(HasSubstr("must be an id without a comma, and not 'all'")));
  }
}

TEST(SheetsBad, AThousandAreListedAndTheRestCounted) {
  std::string rows;
  for (int i = 0; i < 1500; ++i) {
    rows += "2025-04-03,,,ab,1,A,out,x,3.1,,,,\n";
  }
  const auto reading = read(small_club_with_rolls(rows));
  ASSERT_EQ(reading.problems.size(), 1001U);
  EXPECT_EQ(units::sentence(reading.problems.back()),
            "number of problems is '1500', but must be 1000 at most to be listed one by one; the "
            "first 1000 are.");
  EXPECT_EQ(reading.files[3].problems, 1500);
}

TEST(SheetsBad, BlankRowsAreNoMistake) {
  EXPECT_THAT(told_of_rolls("2025-04-03,,,ab,1,A,out,1,3.1,,,,\n,,,,,,,,,,,,\n\n"), IsEmpty());
}

} // namespace
