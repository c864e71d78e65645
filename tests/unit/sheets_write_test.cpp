// Files out: the very bytes that came in where nothing changed, the same
// manner where something did.
#include "unit/sheets_files.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace {

using namespace baize;
using namespace sheets_test;
using testing::ElementsAre;
using testing::HasSubstr;

Files write(const green::Records& records, const Files& received = {}) {
  return sheets::CsvSheets().write(records, received);
}

Files sorted(Files files) {
  std::sort(files.begin(), files.end(),
            [](const auto& a, const auto& b) { return a.name < b.name; });
  return files;
}

std::vector<std::string> lines(const std::string& text) {
  std::vector<std::string> all;
  std::size_t from = 0;
  while (from < text.size()) {
    const std::size_t end = std::min(text.find('\n', from), text.size() - 1) + 1;
    all.push_back(text.substr(from, end - from));
    from = end;
  }
  return all;
}

/// Lines that stand in only one of two texts.
std::pair<std::vector<std::string>, std::vector<std::string>> changed(const std::string& a,
                                                                      const std::string& b) {
  std::pair<std::vector<std::string>, std::vector<std::string>> only;
  const auto in_a = lines(a);
  const auto in_b = lines(b);
  std::copy_if(in_a.begin(), in_a.end(), std::back_inserter(only.first), [&](const auto& line) {
    return std::find(in_b.begin(), in_b.end(), line) == in_b.end();
  });
  std::copy_if(in_b.begin(), in_b.end(), std::back_inserter(only.second), [&](const auto& line) {
    return std::find(in_a.begin(), in_a.end(), line) == in_a.end();
  });
  return only;
}

TEST(SheetsWrite, UnchangedIsByteForByte) {
  const Files files = club("larch_hollow");
  EXPECT_EQ(sorted(write(read(files).records, files)), files);
}

// The file that says it is made, rolls.csv keeps its bytes, and it comes back.
TEST(SheetsWrite, SharedRollsGetAColumnOnlyWhereTheyAreSaid) {
  const Files files = small_club();
  auto records = read(files).records;
  records.visits[0].shared_rolls = "walk 1";
  const Files out = write(records, files);
  EXPECT_EQ(content(out, "rolls.csv"), content(files, "rolls.csv"));
  EXPECT_EQ(content(out, "visits.csv"),
            "day,from,observer,green,shared_rolls\n2025-04-03,08:10,ab,1,walk 1\n");
  const auto again = read(out);
  EXPECT_THAT(sentences(again.problems), testing::IsEmpty());
  EXPECT_EQ(again.records.visits[0].shared_rolls, "walk 1");
  EXPECT_EQ(write(again.records, out), out);
}

TEST(SheetsRead, SharedRollsThatCannotBeAreToldAtTheirCell) {
  Files files = small_club_with("visits.csv", "day,from,observer,green,shared_rolls\n"
                                              "2025-04-03,08:10,ab,1,s1\n"
                                              "2025-04-04,08:10,cd,1,s1\n");
  for (auto& file : files) {
    if (file.name == "rolls.csv") {
      file.content += "2025-04-04,08:10,cd,1,A,out,1,3.10,8\n";
    }
  }
  EXPECT_THAT(sentences(read(files).problems),
              ElementsAre("visits.csv line 3 column shared_rolls: shared_rolls is 's1', but must "
                          "be on one day: visit 2025-04-03T0810/ab/1 in rolls.csv line 2 has it "
                          "on 2025-04-03."));
}

TEST(SheetsWrite, NoListOfObserversIsMadeUp) {
  Files files = small_club();
  files.erase(files.begin() + 2);
  EXPECT_EQ(write(read(files).records, files), files);
}

TEST(SheetsWrite, OtherFilesAreHandedBack) {
  Files files = small_club();
  const auto records = read(files).records;
  files.push_back({"weather.csv", "day,tmin\n"});
  EXPECT_EQ(write(records, files), files);
}

TEST(SheetsWrite, CanonicalFilesAreReadable) {
  const Files files = write(read(small_club()).records);
  EXPECT_EQ(content(files, "rolls.csv"),
            "day,from,observer,green,spot,direction,roll,distance_m,score\n"
            "2025-04-03,08:10,ab,1,A,out,1,3.1,8\n");
  EXPECT_EQ(content(files, "greens.csv"),
            "green,name,grass,spot\n1,First,cool,A\n2,Second,cool,A\n");
  EXPECT_EQ(files.size(), 4U);
}

TEST(SheetsWrite, OneRollChangesOneLineInTheManner) {
  const Files files = club("larch_hollow");
  auto records = read(files).records;
  auto& roll = records.visits[0].runs[1].rolls[1];
  roll.score = 4;
  roll.distance = units::from_inches(110.25);
  const Files out = sorted(write(records, files));
  const auto [gone, come] = changed(content(files, "rolls.csv"), content(out, "rolls.csv"));
  EXPECT_THAT(gone, ElementsAre("3.4.2025;08:10;08:25;ab;1;;A;back;2;9'1\";2;;;1,2 2,05;;5;;\r\n"));
  EXPECT_THAT(come, ElementsAre("3.4.2025;08:10;08:25;ab;1;;A;back;2;\"9'2,25\"\"\";2;;;1,2 "
                                "2,05;;4;;\r\n"));
  for (const auto& file : files) {
    if (file.name != "rolls.csv") {
      EXPECT_EQ(content(out, file.name), file.content) << file.name;
    }
  }
}

TEST(SheetsWrite, NewRecordsAreAppendedInTheManner) {
  const Files files = club("larch_hollow");
  auto records = read(files).records;
  green::Visit fresh;
  fresh.id = "2025-06-01T0700/ab/1";
  fresh.green = "1";
  fresh.observer = "ab";
  fresh.day = *units::make_day(2025, 6, 1);
  fresh.from = units::Minute{7 * 60};
  fresh.conditions.hours_since_mowing = 0.5;
  fresh.runs = {{"A", green::Direction::out, {{1, units::from_inches(120.5), {{}}, 9}}, {}, {}}};
  records.visits.push_back(fresh);
  const Files out = sorted(write(records, files));
  const std::string& rolls = content(out, "rolls.csv");
  const std::string& before = content(files, "rolls.csv");
  EXPECT_EQ(rolls, before + "\r\n01.06.2025;07:00;;ab;1;;A;out;1;\"10'0,5\"\"\";0;0;0;;;9;;\r\n");
  EXPECT_THAT(content(out, "visits.csv"), testing::EndsWith(";01.06.2025;07:00;ab;1;;0,5;;;;\r\n"));
  EXPECT_EQ(read(out).records.visits.back().runs, fresh.runs);
}

TEST(SheetsWrite, ColumnIsAddedOnlyWhereOneIsNeeded) {
  const Files files = small_club();
  auto records = read(files).records;
  records.visits[0].runs[0].rolls[0].marks = {{green::MarkKind::snake, 1.5}};
  const Files out = write(records, files);
  EXPECT_EQ(content(out, "rolls.csv"),
            "day,from,observer,green,spot,direction,roll,distance_m,score,snakes,snake_s\n"
            "2025-04-03,08:10,ab,1,A,out,1,3.10,8,1,1.5\n");
  EXPECT_EQ(read(out).records, records);
}

TEST(SheetsWrite, IdsMadeElsewhereGetAColumn) {
  const Files files = small_club();
  auto records = read(files).records;
  records.visits[0].id = "phone-1";
  const Files out = write(records, files);
  EXPECT_THAT(content(out, "rolls.csv"), HasSubstr(",visit\n"));
  EXPECT_EQ(read(out).records.visits[0].id, "phone-1");
}

TEST(SheetsWrite, GreensKeepTheirWalkingOrder) {
  const Files files = small_club();
  auto records = read(files).records;
  std::swap(records.greens[0], records.greens[1]);
  records.greens.insert(records.greens.begin(), records.greens[0]);
  records.greens[0].id = "3";
  records.greens[0].name = "Third";
  const Files out = write(records, files);
  EXPECT_EQ(content(out, "greens.csv"), "green,name,spot\n3,Third,A\n2,Second,A\n1,First,A\n");
}

TEST(SheetsWrite, GreenFactsStayWhereTheyStood) {
  const Files files = small_club_with("greens.csv", "green,area_m2,spot\n1,400,A\n1,,B\n2,,A\n");
  auto records = read(files).records;
  records.greens[0].area_m2 = 410;
  EXPECT_EQ(content(write(records, files), "greens.csv"),
            "green,area_m2,spot\n1,410,A\n1,,B\n2,,A\n");
}

TEST(SheetsWrite, RepeatedReadingsKeepTheirIds) {
  const Files files = small_club_with("readings.csv", "day,green,kind,value\n"
                                                      "2025-04-03,1,firmness,90\n"
                                                      "2025-04-03,1,firmness,95\n");
  auto records = read(files).records;
  records.readings.erase(records.readings.begin());
  const Files out = write(records, files);
  ASSERT_EQ(read(out).records.readings.size(), 1U);
  EXPECT_EQ(read(out).records.readings[0].id, "2025-04-03//1/firmness#2");
}

TEST(SheetsWrite, UnreadableFileIsWrittenAnew) {
  Files files = small_club();
  const auto records = read(files).records;
  files[3].content = "day,green\n\"";
  EXPECT_EQ(read(write(records, files)).records, records);
}

} // namespace
