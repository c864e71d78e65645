// What every store must do, whoever writes it.
#include "contract/store_contract.h"

#include "contract/sample_club.h"

#include <algorithm>
#include <cmath>

namespace contract {

GTEST_ALLOW_UNINSTANTIATED_PARAMETERIZED_TEST(StoreContract);

namespace {

using services::Receipt;

void expect(const units::Result<Receipt>& got, int added, int corrected, int unchanged) {
  ASSERT_TRUE(got) << units::sentence(got.error());
  EXPECT_EQ(got->added, added);
  EXPECT_EQ(got->corrected, corrected);
  EXPECT_EQ(got->unchanged, unchanged);
}

constexpr int kSampleRecords = 1 + 2 + 2 + 2 + 2 + 2 + 2 + 2;

TEST_P(StoreContract, AnEmptyStoreHasNoClubs) {
  EXPECT_TRUE(store().clubs()->empty());
  EXPECT_EQ(*store().change_number(), 0);
  EXPECT_EQ(store().load("heath").error().code, "no_such_club");
  EXPECT_EQ(store().weather("heath").error().code, "no_such_club");
  EXPECT_EQ(store().received("heath").error().code, "no_such_club");
  EXPECT_EQ(store().keep_weather("heath", sample_weather(), author()).error().code, "no_such_club");
  EXPECT_TRUE(store().clubs()->empty()) << "a refusal leaves nothing behind";
}

TEST_P(StoreContract, EveryFieldComesBack) {
  const green::Records records = sample_club();
  expect(store().keep(records, author(), {}), kSampleRecords, 0, 0);
  reopen();
  const auto loaded = store().load("heath");
  ASSERT_TRUE(loaded) << units::sentence(loaded.error());
  EXPECT_EQ(loaded->club, records.club);
  EXPECT_EQ(loaded->greens, records.greens);
  EXPECT_EQ(loaded->observers, records.observers);
  EXPECT_EQ(loaded->visits, records.visits);
  EXPECT_EQ(loaded->readings, records.readings);
  EXPECT_EQ(loaded->works, records.works);
  EXPECT_EQ(loaded->fixtures, records.fixtures);
  EXPECT_EQ(loaded->standards, records.standards);
}

TEST_P(StoreContract, TheSameRecordsAddNothing) {
  const green::Records records = sample_club();
  ASSERT_TRUE(store().keep(records, author(), sample_files()));
  const auto before = *store().change_number();
  expect(store().keep(records, author(), sample_files()), 0, 0, kSampleRecords);
  EXPECT_EQ(*store().change_number(), before);
  EXPECT_EQ(store().history("heath", "visit", "v1")->size(), 1U);
}

TEST_P(StoreContract, AnotherLineOfTheFileIsNoCorrection) {
  green::Records records = sample_club();
  ASSERT_TRUE(store().keep(records, author(), {}));
  for (green::Visit& visit : records.visits) {
    visit.source = {"rolls.csv", 700};
  }
  expect(store().keep(records, author(), {}), 0, 0, kSampleRecords);
}

TEST_P(StoreContract, ACorrectionIsARevisionBesideTheOldOne) {
  green::Records records = sample_club();
  ASSERT_TRUE(store().keep(records, author(), {}));
  const auto before = *store().change_number();
  records.visits[0].runs[0].rolls[1].marks->pop_back();
  records.works[0].parameters[0].number = 12;
  records.standards[0].score = 7;
  records.club.name = "Heath";
  expect(store().keep(records, {"Bo", "2026-05-09T10:00:00Z"}, {}), 0, 4, kSampleRecords - 4);
  EXPECT_GT(*store().change_number(), before);
  EXPECT_EQ(*store().load("heath"), records);

  const auto history = store().history("heath", "visit", "v1");
  ASSERT_TRUE(history);
  ASSERT_EQ(history->size(), 2U);
  EXPECT_EQ(history->at(0).number, 1);
  EXPECT_EQ(history->at(0).author, "Tess");
  EXPECT_EQ(history->at(0).at, "2026-05-04T07:30:00Z");
  EXPECT_NE(history->at(0).contents.find("bobble"), std::string::npos);
  EXPECT_EQ(history->at(1).number, 2);
  EXPECT_EQ(history->at(1).author, "Bo");
  EXPECT_EQ(history->at(1).contents.find("bobble"), std::string::npos);
}

TEST_P(StoreContract, RecordsNotMentionedStay) {
  const green::Records records = sample_club();
  ASSERT_TRUE(store().keep(records, author(), {}));
  green::Records one;
  one.club.id = "heath";
  one.visits = {records.visits[1]};
  one.visits[0].note = "wet";
  expect(store().keep(one, author(), {}), 0, 1, 0);
  auto expected = records;
  expected.visits[1].note = "wet";
  EXPECT_EQ(*store().load("heath"), expected) << "and a bare club id says nothing of the club";
}

TEST_P(StoreContract, GreensStandInWalkingOrder) {
  green::Records records = sample_club();
  ASSERT_TRUE(store().keep(records, author(), {}));
  const auto ids = [&] {
    std::vector<std::string> all;
    const auto loaded = store().load("heath");
    for (const green::Green& green : loaded->greens) {
      all.push_back(green.id);
    }
    return all;
  };
  EXPECT_EQ(ids(), (std::vector<std::string>{"7", "2"}));
  green::Green extra;
  extra.id = "1";
  records.greens.insert(records.greens.begin() + 1, extra);
  expect(store().keep(records, author(), {}), 1, 0, kSampleRecords);
  EXPECT_EQ(ids(), (std::vector<std::string>{"7", "1", "2"}));
  std::reverse(records.greens.begin(), records.greens.end());
  ASSERT_TRUE(store().keep(records, author(), {}));
  EXPECT_EQ(ids(), (std::vector<std::string>{"2", "1", "7"}));
  records.greens.resize(1);
  ASSERT_TRUE(store().keep(records, author(), {}));
  EXPECT_EQ(ids(), (std::vector<std::string>{"2", "1", "7"})) << "one alone moves nothing";
}

TEST_P(StoreContract, ClubsDoNotMix) {
  ASSERT_TRUE(store().keep(sample_club("heath"), author(), {}));
  green::Records other = sample_club("mere");
  other.visits.pop_back();
  ASSERT_TRUE(store().keep(other, author(), {}));
  EXPECT_EQ(store().load("mere")->visits.size(), 1U);
  EXPECT_EQ(store().load("heath")->visits.size(), 2U);
  const auto clubs = *store().clubs();
  ASSERT_EQ(clubs.size(), 2U);
  EXPECT_EQ(clubs[0].id, "heath");
  EXPECT_EQ(clubs[1].name, "Heath and Mere");
}

TEST_P(StoreContract, WeatherIsKeptByDayAndCorrectedByDay) {
  ASSERT_TRUE(store().keep(sample_club(), author(), {}));
  climate::Weather weather = sample_weather();
  expect(store().keep_weather("heath", weather, author()), 2, 0, 0);
  EXPECT_EQ(*store().weather("heath"), weather);
  expect(store().keep_weather("heath", weather, author()), 0, 0, 2);
  weather.begin()->second.rain_mm = 4.5;
  expect(store().keep_weather("heath", weather, author()), 0, 1, 1);
  reopen();
  EXPECT_EQ(*store().weather("heath"), weather);
  EXPECT_EQ(store().history("heath", "weather_day", "2026-05-04")->size(), 2U);
}

TEST_P(StoreContract, FilesComeBackByteForByte) {
  const auto files = sample_files();
  ASSERT_TRUE(store().keep(sample_club(), author(), files));
  reopen();
  EXPECT_EQ(*store().received("heath"), files);
  auto newer = files;
  newer[0].content += "more\n";
  ASSERT_TRUE(store().keep(sample_club(), author(), {newer[0]}));
  EXPECT_EQ(*store().received("heath"), newer);
  ASSERT_TRUE(store().keep(sample_club(), author(), {files[0]}));
  EXPECT_EQ(*store().received("heath"), files) << "the newest copy, even of an old content";
}

TEST_P(StoreContract, ARefusalLeavesNothingHalfWritten) {
  const green::Records good = sample_club();
  ASSERT_TRUE(store().keep(good, author(), {}));
  const auto before = *store().change_number();
  green::Records bad = good;
  bad.visits[0].note = "another";
  bad.works[1].greens = {"19"};
  bad.works[1].source = {"works.csv", 3};
  const auto refused = store().keep(bad, author(), sample_files());
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().code, "unknown_green");
  EXPECT_EQ(refused.error().value, "19");
  EXPECT_EQ(refused.error().place, "works.csv line 3");
  EXPECT_EQ(*store().load("heath"), good);
  EXPECT_TRUE(store().received("heath")->empty());
  EXPECT_EQ(*store().change_number(), before);
}

TEST_P(StoreContract, WhatCannotBeANumberIsRefused) {
  green::Records bad = sample_club();
  bad.readings[0].value = std::nan("");
  EXPECT_EQ(store().keep(bad, author(), {}).error().code, "not_a_number");
  EXPECT_TRUE(store().clubs()->empty());
}

TEST_P(StoreContract, AnObserverNeedNotBeDeclared) {
  green::Records records = sample_club();
  records.observers.clear();
  ASSERT_TRUE(store().keep(records, author(), {}));
  EXPECT_EQ(*store().load("heath"), records);
  records.observers = sample_club().observers;
  expect(store().keep(records, author(), {}), 2, 0, kSampleRecords - 2);
  EXPECT_EQ(*store().load("heath"), records);
}

TEST_P(StoreContract, HistoryOfEveryKind) {
  ASSERT_TRUE(store().keep(sample_club(), author(), {}));
  const std::vector<std::pair<std::string, std::string>> all{
      {"club", "heath"}, {"green", "7"}, {"observer", "ann"}, {"visit", "v1"},
      {"reading", "r1"}, {"work", "w1"}, {"fixture", "f1"},   {"standard", "7/11-01/02-28"}};
  for (const auto& [kind, id] : all) {
    const auto history = store().history("heath", kind, id);
    ASSERT_TRUE(history) << kind;
    ASSERT_EQ(history->size(), 1U) << kind;
    EXPECT_EQ(history->front().contents.front(), '{') << kind;
    EXPECT_GT(history->front().contents.size(), 20U) << kind;
  }
  EXPECT_EQ(store().history("heath", "visit", "v9").error().code, "no_such_record");
  EXPECT_EQ(store().history("heath", "cup", "1").error().code, "no_such_kind");
}

} // namespace
} // namespace contract
