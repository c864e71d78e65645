// Photos among records, and the pictures that a file of entries carries.
#include "baize/entries_json/entries.h"
#include "unit/green_samples.h"
#include "unit/journal_samples.h"

#include <gtest/gtest.h>

namespace {

using namespace journal_test;
using entries_json::Package;
using entries_json::Picture;

const std::string kPhoto = id(900041);

Value::Members photo_set() {
  return {{"visit", text(kVisit)},
          {"taken", text("2026-05-03T07:09:12Z")},
          {"sha256", text(std::string(64, 'a'))},
          {"bytes", number(1000)}};
}

std::vector<units::Problem> problems(Value::Members set) {
  const auto made = journal::records(
      journal::fold({visit(1, visit_fields()), entry(2, Kind::photo, kPhoto, std::move(set))}));
  return made.photos.at(0).problems;
}

/// The set with one field said otherwise; without it where nothing is said.
Value::Members with(const std::string& name, const Value& value) {
  Value::Members set = photo_set();
  std::erase_if(set, [&](const auto& member) { return member.name == name; });
  if (!value.nothing()) {
    set.push_back({name, value});
  }
  return set;
}

TEST(JournalPhotos, OneThatIsToldWhole) {
  EXPECT_TRUE(problems(photo_set()).empty());
  EXPECT_TRUE(problems(with("bytes", number(journal::kMostPhotoBytes))).empty());
}

TEST(JournalPhotos, EachFaultHasItsSentence) {
  using samples::expect_only;
  expect_only(problems(with("visit", nothing())), "photo_of_what");
  expect_only(problems(with("visit", text(id(7)))), "no_such_visit");
  expect_only(problems(with("work", text(id(7)))), "photo_of_what");
  expect_only(problems(with("taken", nothing())), "missing_taken");
  expect_only(problems(with("taken", text("noon"))), "not_an_instant");
  expect_only(problems(with("taken", number(7))), "wrong_type");
  expect_only(problems(with("sha256", nothing())), "missing_sha256");
  expect_only(problems(with("sha256", text(std::string(64, 'A')))), "not_a_sha256");
  expect_only(problems(with("sha256", text("aa"))), "not_a_sha256");
  expect_only(problems(with("bytes", nothing())), "missing_bytes");
  expect_only(problems(with("bytes", number(0))), "bytes_out_of_range");
  expect_only(problems(with("bytes", number(journal::kMostPhotoBytes + 1))), "bytes_out_of_range");
  expect_only(problems(with("bytes", number(1.5))), "not_a_whole_number");
  expect_only(problems(with("green", text("7"))), "unknown_field");
}

std::string written(const std::string& bytes) {
  Package package{kPhone, "2026-05-03T08:00:00Z", {}, {}, {{kPhoto, bytes}}};
  const std::string text = entries_json::write_package(package);
  const auto read = entries_json::read_package(text);
  EXPECT_TRUE(read && read->pictures == package.pictures && read->unread.empty()) << text;
  const auto at = text.find("\"jpeg\":\"") + 8;
  return text.substr(at, text.find('"', at) - at);
}

// RFC 4648, section 10.
TEST(PicturesInAFile, TheStandardsOwnVectors) {
  EXPECT_EQ(written(""), "");
  EXPECT_EQ(written("f"), "Zg==");
  EXPECT_EQ(written("fo"), "Zm8=");
  EXPECT_EQ(written("foo"), "Zm9v");
  EXPECT_EQ(written("foob"), "Zm9vYg==");
  EXPECT_EQ(written("fooba"), "Zm9vYmE=");
  EXPECT_EQ(written("foobar"), "Zm9vYmFy");
  EXPECT_EQ(written(std::string("\xff\xd8\0\xfb\xff", 5)), "/9gA+/8=");
}

TEST(PicturesInAFile, OneThatCannotBeReadStopsNoOther) {
  const std::string head = R"({"form":"baize-entries","version":1,"phone":")" + kPhone +
                           R"(","sent_at":"2026-05-03T08:00:00Z","entries":[],"photos":)";
  const auto unread = [&](const std::string& one) {
    const auto read = entries_json::read_package(head + "[" + one + R"(,{"photo":")" + kPhoto +
                                                 R"(","jpeg":"Zg=="}]})");
    EXPECT_EQ(read->pictures.size(), 1U) << one;
    return read->unread.size() == 1 ? read->unread[0].problem.code : "none";
  };
  const std::string named = R"({"photo":")" + kPhoto + R"(","jpeg":)";
  for (const std::string jpeg :
       {"Zg=", "Zg", "Zh==", "Z===", "====", "Zm9v\\n", "Zm 9", "Zg==Zg==", "Zm9v="}) {
    EXPECT_EQ(unread(named + "\"" + jpeg + "\"}"), "not_base64") << jpeg;
  }
  EXPECT_EQ(unread("7"), "wrong_type");
  EXPECT_EQ(unread(named + "7}"), "wrong_type");
  EXPECT_EQ(unread(R"({"photo":"x","jpeg":""})"), "not_a_uuid");
  EXPECT_EQ(unread(R"({"photo":")" + kPhoto + "\"}"), "member_missing");
  EXPECT_EQ(unread(named + R"("","by":"x"})"), "unknown_member");
  EXPECT_EQ(entries_json::read_package(head + "7}").error().code, "wrong_type");
}

} // namespace
