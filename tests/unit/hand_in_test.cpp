// The verb, on a real store: what is kept, what is refused, what becomes a record.
#include "baize/services/hand_in.h"
#include "baize/store_sqlite/store.h"
#include "contract/folder.h"
#include "unit/green_samples.h"
#include "unit/journal_samples.h"

#include <gtest/gtest.h>

namespace {

using namespace journal_test;
using services::HandInReceipt;
using services::ThingState;

class HandInTest : public testing::Test {
 protected:
  void SetUp() override {
    auto opened = store_sqlite::SqliteStore::open(folder_.file("club.sqlite3"));
    ASSERT_TRUE(opened);
    store_ = std::move(*opened);
    green::Records club = samples::records();
    club.visits.clear();
    ASSERT_TRUE(store_->keep(club, {"ann", "2026-05-01T00:00:00Z"}, {}));
  }
  HandInReceipt hand_in(std::vector<Entry> entries, const std::string& phone = kPhone,
                        const std::string& now = "2026-05-03T08:00:30Z") {
    auto told =
        services::hand_in(*store_, {"hill", phone, "2026-05-03T08:00:00Z", std::move(entries)},
                          {"phone " + phone, now}, samples::kToday);
    EXPECT_TRUE(told) << units::sentence(told.error());
    return told ? *told : HandInReceipt{};
  }
  green::Records records() { return *store_->load("hill"); }
  contract::Folder folder_;
  std::unique_ptr<store_sqlite::SqliteStore> store_;
};

std::vector<Entry> whole_visit() {
  return {visit(1, visit_fields()), roll(2, roll_fields())};
}

TEST_F(HandInTest, AClosedVisitBecomesARecord) {
  const auto told = hand_in(whole_visit());
  EXPECT_EQ(told.kept, (std::vector{id(1), id(2)}));
  EXPECT_TRUE(told.refused.empty());
  EXPECT_TRUE(told.remarks.empty());
  ASSERT_EQ(told.visits.size(), 1U);
  EXPECT_EQ(told.visits[0].state, ThingState::accepted);
  EXPECT_EQ(told.records.added, 1);
  ASSERT_EQ(records().visits.size(), 1U);
  EXPECT_EQ(records().visits[0].id, kVisit);
  EXPECT_EQ(records().visits[0].runs[0].rolls[0].score, 8);
  EXPECT_EQ(store_->history("hill", "visit", kVisit)->at(0).author, "phone " + kPhone);
}

TEST_F(HandInTest, TheSameAgainChangesNothing) {
  hand_in(whole_visit());
  const auto before = *store_->change_number();
  const auto told = hand_in(whole_visit());
  EXPECT_EQ(told.kept.size(), 2U);
  EXPECT_EQ(told.visits[0].state, ThingState::accepted);
  EXPECT_EQ(*store_->change_number(), before);
}

TEST_F(HandInTest, AnOpenVisitWaits) {
  auto entries = whole_visit();
  entries[0] =
      visit(1, {{"club", text("hill")}, {"green", text("7")}, {"day", text("2026-05-03")}});
  EXPECT_EQ(hand_in(entries).visits[0].state, ThingState::open);
  EXPECT_TRUE(records().visits.empty());
  EXPECT_EQ(hand_in({visit(3, {{"done", flag(true)}}, {1})}).visits[0].state, ThingState::accepted);
  EXPECT_EQ(records().visits.size(), 1U);
}

TEST_F(HandInTest, ARefusedVisitIsKeptAndMended) {
  auto entries = whole_visit();
  entries.push_back(roll(3, {{"score", number(11)}}, {2}));
  auto told = hand_in(entries);
  EXPECT_EQ(told.kept.size(), 3U);
  EXPECT_EQ(told.visits[0].state, ThingState::refused);
  ASSERT_EQ(told.visits[0].problems.size(), 1U);
  EXPECT_EQ(told.visits[0].problems[0].code, "score_out_of_range");
  EXPECT_TRUE(records().visits.empty());
  told = hand_in({roll(4, {{"score", number(9)}}, {3})});
  EXPECT_EQ(told.visits[0].state, ThingState::accepted);
  EXPECT_EQ(records().visits[0].runs[0].rolls[0].score, 9);
}

TEST_F(HandInTest, AnAcceptedVisitThatBreaksKeepsItsRecord) {
  hand_in(whole_visit());
  EXPECT_EQ(hand_in({visit(3, {{"green", text("19")}}, {1})}).visits[0].problems[0].code,
            "unknown_green");
  EXPECT_EQ(records().visits[0].green, "7");
}

TEST_F(HandInTest, OneBadEntryStopsNoOther) {
  auto entries = whole_visit();
  entries.push_back(roll(3, {{"club", text("dale")}}, {2}));
  entries.push_back(roll(4, {}, {2}));
  const auto told = hand_in(entries);
  EXPECT_EQ(told.kept.size(), 2U);
  ASSERT_EQ(told.refused.size(), 2U);
  EXPECT_EQ(told.refused[0].problem.code, "club_differs");
  EXPECT_EQ(told.refused[1].problem.code, "nothing_set");
  EXPECT_EQ(told.visits[0].state, ThingState::accepted);
}

TEST_F(HandInTest, TheSameIdWithOtherContentsIsRefused) {
  hand_in(whole_visit());
  const auto told = hand_in({roll(2, roll_fields(2))});
  ASSERT_EQ(told.refused.size(), 1U);
  samples::expect_only({told.refused[0].problem}, "entry_differs");
  EXPECT_EQ(records().visits[0].runs[0].rolls[0].order, 1);
}

TEST_F(HandInTest, ClocksThatDifferAreTold) {
  const auto told = hand_in(whole_visit(), kPhone, "2026-05-03T06:00:00Z");
  samples::expect_only(told.remarks, "clock_differs");
  EXPECT_NE(told.remarks[0].rule.find("120 minutes ahead"), std::string::npos);
  EXPECT_EQ(told.visits[0].state, ThingState::accepted);
}

TEST_F(HandInTest, TwoPhonesAtOneVisitAreMergedByField) {
  hand_in(whole_visit());
  hand_in({visit(3, {{"dew", text("light")}}, {1})});
  const auto told = hand_in(
      {visit(4, {{"wind", text("calm")}}, {1}), entry(5, Kind::roll, id(900012), roll_fields(2))},
      kOther);
  EXPECT_EQ(told.visits[0].conflicts, 0);
  const auto visit = records().visits.at(0);
  EXPECT_EQ(visit.conditions.dew, "light");
  EXPECT_EQ(visit.conditions.wind, "calm");
  EXPECT_EQ(visit.runs[0].rolls.size(), 2U);
}

TEST_F(HandInTest, ConflictsAreListedWithBothVersionsUntilSolved) {
  hand_in(whole_visit());
  hand_in({roll(3, {{"score", number(6)}}, {2})});
  const auto told = hand_in({roll(4, {{"score", number(7)}}, {2})}, kOther);
  EXPECT_EQ(told.visits[0].conflicts, 1);
  EXPECT_EQ(told.visits[0].state, ThingState::accepted);
  auto open = *services::open_conflicts(*store_, "hill");
  ASSERT_EQ(open.size(), 1U);
  EXPECT_EQ(open[0].field, "score");
  EXPECT_EQ(*open[0].values[0].value.number(), 6);
  EXPECT_EQ(*open[0].values[1].value.number(), 7);
  EXPECT_EQ(records().visits[0].runs[0].rolls[0].score, 7);
  EXPECT_EQ(hand_in({roll(5, {{"score", number(6)}}, {3, 4})}).visits[0].conflicts, 0);
  EXPECT_TRUE(services::open_conflicts(*store_, "hill")->empty());
  EXPECT_EQ(records().visits[0].runs[0].rolls[0].score, 6);
}

TEST_F(HandInTest, ARemovedVisitGoesAndComesBack) {
  hand_in(whole_visit());
  EXPECT_TRUE(hand_in({visit(3, {{"removed", flag(true)}}, {1})}).visits[0].removed);
  EXPECT_TRUE(records().visits.empty());
  hand_in({visit(4, {{"removed", flag(false)}}, {3})});
  EXPECT_EQ(records().visits.size(), 1U);
}

TEST_F(HandInTest, ARollGoesToAnotherVisit) {
  auto entries = whole_visit();
  auto fields = visit_fields();
  for (auto& member : fields) {
    member.value = member.name == "from" ? text("08:00") : member.value;
  }
  entries.push_back(entry(3, Kind::visit, id(900002), fields));
  entries.push_back(entry(4, Kind::roll, id(900012), roll_fields(2)));
  hand_in(entries);
  const auto told = hand_in({entry(5, Kind::roll, id(900012), {{"visit", text(id(900002))}}, {4})});
  EXPECT_EQ(told.visits.size(), 2U);
  EXPECT_TRUE(told.remarks.empty());
  ASSERT_EQ(records().visits.size(), 2U);
  EXPECT_EQ(records().visits[0].runs[0].rolls.size(), 1U);
  EXPECT_EQ(records().visits[1].runs[0].rolls.size(), 1U);
}

TEST_F(HandInTest, RollsMayComeBeforeTheirVisit) {
  const auto told = hand_in({roll(2, roll_fields())});
  EXPECT_EQ(told.kept.size(), 1U);
  samples::expect_only(told.remarks, "no_such_visit");
  EXPECT_EQ(hand_in({visit(1, visit_fields())}).visits[0].state, ThingState::accepted);
}

TEST_F(HandInTest, OneObserverCannotBeAtTwoGreens) {
  hand_in(whole_visit());
  auto fields = visit_fields();
  for (auto& member : fields) {
    member.value = member.name == "green" ? text("8") : member.value;
  }
  auto rolls = roll_fields();
  for (auto& member : rolls) {
    member.value = member.name == "visit" ? text(id(900002)) : member.value;
  }
  const auto told =
      hand_in({entry(3, Kind::visit, id(900002), fields), entry(4, Kind::roll, id(900012), rolls)});
  ASSERT_EQ(told.visits.size(), 1U);
  EXPECT_EQ(told.visits[0].state, ThingState::refused);
  EXPECT_EQ(told.visits[0].problems[0].code, "two_visits_at_once");
  EXPECT_EQ(
      hand_in({entry(5, Kind::visit, id(900002), {{"from", text("07:30")}}, {3})}).visits[0].state,
      ThingState::accepted);
}

TEST_F(HandInTest, ADayAheadOfTheServerIsTheClubs) {
  auto fields = visit_fields();
  for (auto& member : fields) {
    member.value = member.name == "day" ? text(units::iso(samples::kToday + 1)) : member.value;
  }
  EXPECT_EQ(hand_in({visit(1, fields), roll(2, roll_fields())}).visits[0].state,
            ThingState::accepted);
}

TEST_F(HandInTest, ReadingsAndWorksNeedNoClosing) {
  const std::vector<Entry> entries{
      entry(1, Kind::reading, id(900031),
            {{"club", text("hill")},
             {"green", text("7")},
             {"day", text("2026-05-03")},
             {"measured", text("firmness")},
             {"value", number(95)}}),
      entry(2, Kind::work, id(900041),
            {{"club", text("hill")}, {"day", text("2026-05-03")}, {"done_as", text("mowing")}}),
      entry(3, Kind::work, id(900042),
            {{"club", text("hill")}, {"day", text("2026-05-03")}, {"done_as", text("dancing")}})};
  const auto told = hand_in(entries);
  ASSERT_EQ(told.others.size(), 3U);
  EXPECT_EQ(told.others[0].state, ThingState::accepted);
  EXPECT_EQ(told.others[1].state, ThingState::accepted);
  EXPECT_EQ(told.others[2].problems.at(0).code, "unknown_kind");
  EXPECT_EQ(records().readings.size(), 1U);
  EXPECT_EQ(records().works.size(), samples::records().works.size() + 1);
  hand_in({entry(4, Kind::reading, id(900031), {{"removed", flag(true)}}, {1}),
           entry(5, Kind::work, id(900041), {{"removed", flag(true)}}, {2})});
  EXPECT_TRUE(records().readings.empty());
  EXPECT_EQ(records().works.size(), samples::records().works.size());
}

TEST_F(HandInTest, AClubThatIsNotThereIsRefused) {
  const auto told =
      services::hand_in(*store_, {"moor", kPhone, "2026-05-03T08:00:00Z", whole_visit()},
                        {"x", "2026-05-03T08:00:00Z"}, samples::kToday);
  ASSERT_FALSE(told);
  EXPECT_EQ(told.error().code, "no_such_club");
}

} // namespace
