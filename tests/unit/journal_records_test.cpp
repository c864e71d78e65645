// Records made from folded entries, and what cannot become one.
#include "unit/green_samples.h"
#include "unit/journal_samples.h"

#include <gtest/gtest.h>

namespace {

using namespace journal_test;
using samples::codes;
using samples::expect_only;

journal::MadeRecords made(std::vector<Entry> entries) {
  return journal::records(journal::fold(std::move(entries)));
}

TEST(JournalRecords, AVisitWithItsRolls) {
  const auto all = made({visit(1, visit_fields()), roll(2, roll_fields()),
                         entry(3, Kind::roll, id(900012),
                               {{"visit", text(kVisit)},
                                {"spot", text("A")},
                                {"direction", text("back")},
                                {"order", number(1)},
                                {"score", number(9)},
                                {"marks", Value{Value::List{}}}})});
  ASSERT_EQ(all.visits.size(), 1U);
  const auto& one = all.visits[0];
  EXPECT_TRUE(one.problems.empty());
  EXPECT_TRUE(one.done);
  EXPECT_EQ(one.club, "hill");
  EXPECT_EQ(one.record.id, kVisit);
  EXPECT_EQ(units::iso(one.record.day), "2026-05-03");
  EXPECT_EQ(units::iso(*one.record.from), "07:00");
  ASSERT_EQ(one.record.runs.size(), 2U);
  const auto& out = one.record.runs[0].rolls.at(0);
  EXPECT_EQ(out.distance->metres, 3.05);
  ASSERT_EQ(out.marks->size(), 1U);
  EXPECT_EQ(out.marks->front().kind, green::MarkKind::snake);
  const auto& back = one.record.runs[1].rolls.at(0);
  EXPECT_FALSE(back.distance);
  EXPECT_TRUE(back.marks->empty());
  EXPECT_TRUE(green::validate(one.record, samples::kToday).empty());
}

TEST(JournalRecords, RollsStandByTheirOrder) {
  const auto all = made({visit(1, visit_fields()), roll(2, roll_fields(3)),
                         entry(3, Kind::roll, id(900012), roll_fields(1))});
  EXPECT_EQ(all.visits[0].record.runs.at(0).rolls.at(0).order, 1);
  EXPECT_EQ(all.visits[0].record.runs.at(0).rolls.at(1).order, 3);
}

TEST(JournalRecords, RemovedRollsAreLeftOut) {
  const auto all = made(
      {visit(1, visit_fields()), roll(2, roll_fields()), roll(3, {{"removed", flag(true)}}, {2})});
  EXPECT_TRUE(all.visits[0].record.runs.empty());
  EXPECT_TRUE(all.visits[0].problems.empty());
}

TEST(JournalRecords, ATotalAlone) {
  const auto all = made({visit(1, visit_fields()), entry(2, Kind::total, id(900021),
                                                         {{"visit", text(kVisit)},
                                                          {"spot", text("A")},
                                                          {"direction", text("out")},
                                                          {"total", number(24)},
                                                          {"total_of", number(3)}})});
  EXPECT_EQ(all.visits[0].record.runs.at(0).total, 24);
  EXPECT_EQ(all.visits[0].record.runs.at(0).total_of, 3);
}

TEST(JournalRecords, TwoTotalsOfOneRun) {
  const Value::Members total{{"visit", text(kVisit)},
                             {"direction", text("out")},
                             {"total", number(24)},
                             {"total_of", number(3)}};
  const auto all = made({visit(1, visit_fields()), entry(2, Kind::total, id(900021), total),
                         entry(3, Kind::total, id(900022), total)});
  expect_only(all.visits[0].problems, "total_twice");
}

TEST(JournalRecords, ARollWhoseVisitNeverCame) {
  const auto all = made({roll(2, roll_fields())});
  EXPECT_TRUE(all.visits.empty());
  expect_only(all.astray, "no_such_visit");
  EXPECT_EQ(all.astray[0].place, "roll " + kRoll);
}

TEST(JournalRecords, AnUnknownFieldIsNamed) {
  const auto all = made({visit(1, visit_fields()), visit(2, {{"moon", text("full")}}, {1})});
  expect_only(all.visits[0].problems, "unknown_field");
  EXPECT_EQ(units::sentence(all.visits[0].problems[0]),
            "visit " + kVisit + ": moon is 'full', but must be a field of a visit.");
}

struct Wrong {
  const char* field;
  Value value;
  const char* code;
};

TEST(JournalRecords, ValuesOfAnotherType) {
  const std::vector<Wrong> wrong{{"score", text("8"), "wrong_type"},
                                 {"score", number(7.5), "not_a_whole_number"},
                                 {"order", number(1e300), "not_a_whole_number"},
                                 {"distance", flag(true), "wrong_type"},
                                 {"marks", text("none"), "wrong_type"},
                                 {"marks", Value{Value::List{mark("hop")}}, "not_a_known_word"},
                                 {"direction", text("up"), "not_a_known_word"},
                                 {"spot", number(1), "wrong_type"},
                                 {"released", text("noon"), "not_an_instant"},
                                 {"removed", text("yes"), "wrong_type"}};
  for (const Wrong& one : wrong) {
    const auto all = made(
        {visit(1, visit_fields()), roll(2, roll_fields()), roll(3, {{one.field, one.value}}, {2})});
    SCOPED_TRACE(one.field);
    expect_only(all.visits[0].problems, one.code);
  }
}

TEST(JournalRecords, WhatIsWantedAndMissing) {
  for (const char* field : {"club", "day"}) {
    const auto all = made({visit(1, visit_fields()), visit(2, {{field, nothing()}}, {1})});
    expect_only(all.visits[0].problems, std::string("missing_") + field);
  }
  for (const char* field : {"direction", "order"}) {
    const auto all = made(
        {visit(1, visit_fields()), roll(2, roll_fields()), roll(3, {{field, nothing()}}, {2})});
    expect_only(all.visits[0].problems, std::string("missing_") + field);
  }
}

TEST(JournalRecords, ConflictsOfRollsCountForTheVisit) {
  const auto all =
      made({visit(1, visit_fields()), roll(2, roll_fields()), roll(3, {{"score", number(6)}}, {2}),
            roll(4, {{"score", number(7)}}, {2})});
  EXPECT_EQ(all.visits[0].conflicts, 1);
}

TEST(JournalRecords, AReading) {
  const auto all = made({entry(1, Kind::reading, id(900031),
                               {{"club", text("hill")},
                                {"green", text("7")},
                                {"day", text("2026-05-03")},
                                {"at", text("08:15")},
                                {"measured", text("soil_moisture")},
                                {"value", number(23.5)},
                                {"rod_length", number(60)}})});
  ASSERT_EQ(all.readings.size(), 1U);
  EXPECT_TRUE(all.readings[0].problems.empty());
  EXPECT_TRUE(green::validate(all.readings[0].record, samples::kToday).empty());
  EXPECT_EQ(all.readings[0].record.value, 23.5);
}

TEST(JournalRecords, AWork) {
  const Value parameters{journal::sorted({{"tine_diameter", number(13)},
                                          {"diameter_measured", text("outside")},
                                          {"depth", nothing()}})};
  const auto all = made({entry(1, Kind::work, id(900041),
                               {{"club", text("hill")},
                                {"day", text("2026-05-03")},
                                {"greens", Value{Value::List{text("7"), text("8")}}},
                                {"done_as", text("coring")},
                                {"disruptive", nothing()},
                                {"parameters", parameters}})});
  ASSERT_EQ(all.works.size(), 1U);
  EXPECT_TRUE(all.works[0].problems.empty());
  const auto& work = all.works[0].record;
  EXPECT_EQ(work.greens, (std::vector<std::string>{"7", "8"}));
  EXPECT_EQ(work.parameters.size(), 2U);
  EXPECT_TRUE(green::validate(work, samples::kToday).empty());
}

} // namespace
