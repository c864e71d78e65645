// One entry alone, and entries as JSON.
#include "baize/entries_json/entries.h"
#include "unit/green_samples.h"
#include "unit/journal_samples.h"

#include <gtest/gtest.h>

#include <limits>

namespace {

using namespace journal_test;
using samples::expect_only;

TEST(JournalEntry, AGoodOne) {
  EXPECT_TRUE(journal::check(roll(1, roll_fields())).empty());
}

TEST(JournalEntry, EachRule) {
  const auto spoiled = [](auto spoil) {
    Entry e = roll(1, roll_fields(), {7});
    spoil(e);
    return journal::check(e);
  };
  Value deep = flag(true);
  for (std::size_t i = 0; i < journal::kDeepest; ++i) {
    deep = Value{Value::List{deep}};
  }
  expect_only(spoiled([](Entry& e) { e.id = "1"; }), "not_a_uuid");
  expect_only(spoiled([](Entry& e) { e.thing[14] = '4'; }), "not_a_uuid");
  expect_only(spoiled([](Entry& e) { e.phone[0] = 'A'; }), "not_a_uuid");
  expect_only(spoiled([](Entry& e) { e.at = "2026-02-30T07:00:00Z"; }), "not_an_instant");
  expect_only(spoiled([](Entry& e) { e.at = "2026-02-03T07:00:00+01:00"; }), "not_an_instant");
  expect_only(spoiled([](Entry& e) { e.by.assign(101, 'a'); }), "name_too_long");
  expect_only(spoiled([](Entry& e) { e.set.clear(); }), "nothing_set");
  expect_only(spoiled([](Entry& e) { e.set = {{"note", text(std::string(4001, 'a'))}}; }),
              "text_too_long");
  expect_only(spoiled([](Entry& e) { e.set = {{"marks", Value{Value::List(401)}}}; }),
              "list_too_long");
  expect_only(spoiled([&](Entry& e) { e.set = {{"note", deep}}; }), "too_deep");
  expect_only(spoiled([](Entry& e) { e.set = {{std::string(101, 'a'), flag(true)}}; }),
              "name_too_long");
  expect_only(spoiled([](Entry& e) {
                e.set = {{"distance", number(std::numeric_limits<double>::infinity())}};
              }),
              "not_finite");
  expect_only(spoiled([](Entry& e) { e.over = {e.id}; }), "over_itself");
  expect_only(spoiled([](Entry& e) { e.over.assign(33, id(5)); }), "list_too_long");
  expect_only(spoiled([](Entry& e) {
                for (int i = 0; i < 34; ++i) {
                  e.set.push_back({"z" + std::to_string(i), flag(true)});
                }
              }),
              "too_many_members");
}

TEST(JournalEntry, Instants) {
  EXPECT_EQ(journal::parse_instant("1970-01-02T00:00:01.250Z").value(), 86401250);
  EXPECT_EQ(journal::parse_instant("1970-01-01T01:00:00Z").value(), 3600000);
  for (const char* bad : {"", "1970-01-02", "1970-01-02T24:00:00Z", "1970-01-02T00:60:00Z",
                          "1970-01-02T00:00:00.25Z", "1970-01-02 00:00:00Z"}) {
    EXPECT_FALSE(journal::parse_instant(bad)) << bad;
  }
}

TEST(JournalEntry, NumbersAreOneSort) {
  const auto seven = entries_json::value_of(entries_json::Read::parse("7"));
  EXPECT_EQ(seven, entries_json::value_of(entries_json::Read::parse("7.0")));
  EXPECT_EQ(entries_json::text(entries_json::to_json(seven)), "7");
}

TEST(JournalEntry, ReadsBackWhatItWrote) {
  entries_json::Package package;
  package.phone = kPhone;
  package.sent_at = "2026-05-03T08:00:00Z";
  package.entries = {visit(1, visit_fields()), roll(2, roll_fields()),
                     roll(3, {{"distance", nothing()}}, {2})};
  const auto read = entries_json::read_package(entries_json::write_package(package));
  ASSERT_TRUE(read) << units::sentence(read.error());
  EXPECT_EQ(read->entries, package.entries);
  EXPECT_TRUE(read->unread.empty());
}

TEST(JournalEntry, OneBadEntryStopsNoOther) {
  entries_json::Package package;
  package.phone = kPhone;
  package.sent_at = "2026-05-03T08:00:00Z";
  package.entries = {visit(1, visit_fields()), roll(2, roll_fields())};
  package.entries[0].at = "yesterday";
  const auto read = entries_json::read_package(entries_json::write_package(package));
  ASSERT_TRUE(read);
  ASSERT_EQ(read->unread.size(), 1U);
  EXPECT_EQ(read->unread[0].id, id(1));
  EXPECT_EQ(units::sentence(read->unread[0].problem),
            "entry " + id(1) +
                ": at is 'yesterday', but must be a time in UTC written YYYY-MM-DDTHH:MM:SS.mmmZ.");
  EXPECT_EQ(read->entries.size(), 1U);
}

TEST(JournalEntry, BodiesThatAreNone) {
  const auto refused = [](const std::string& body) {
    const auto read = entries_json::read_package(body);
    return read ? std::vector<units::Problem>{} : std::vector{read.error()};
  };
  const std::string head = R"({"form":"baize-entries","version":1,"phone":")" + kPhone +
                           R"(","sent_at":"2026-05-03T08:00:00Z",)";
  expect_only(refused(""), "not_json");
  expect_only(refused("{\"form\":\"baize-entries\""), "not_json");
  expect_only(refused("\"\xff\""), "not_json");
  expect_only(refused("[]"), "not_entries");
  expect_only(refused(R"({"form":"other"})"), "not_entries");
  expect_only(refused(head + R"("entries":{}})"), "wrong_type");
  expect_only(refused(head + R"("moon":1,"entries":[]})"), "unknown_member");
  expect_only(refused(R"({"form":"baize-entries","version":2})"), "version_not_known");
  expect_only(refused(R"({"form":"baize-entries","version":1,"phone":"x"})"), "not_a_uuid");
  EXPECT_TRUE(refused(head + R"("entries":[]})").empty());
  const auto read = entries_json::read_package(head + R"("entries":[1,{"id":3},[]]})");
  ASSERT_TRUE(read);
  EXPECT_EQ(read->unread.size(), 3U);
}

TEST(JournalEntry, DeepAndWideBodiesAreReadInLittleTime) {
  const std::string deep = std::string(200000, '[') + std::string(200000, ']');
  EXPECT_FALSE(entries_json::read_package(deep));
  const std::string head = R"({"form":"baize-entries","version":1,"phone":")" + kPhone +
                           R"(","sent_at":"2026-05-03T08:00:00Z","entries":[{"set":{)";
  std::string wide;
  for (int i = 0; i < 100000; ++i) {
    wide += (i == 0 ? "\"" : ",\"") + std::to_string(i) + "\":" + (i == 0 ? deep : "1");
  }
  const auto read = entries_json::read_package(head + wide + "}}]}");
  ASSERT_TRUE(read);
  EXPECT_EQ(read->unread.size(), 1U);
}

} // namespace
