// What entries say together, as the phone shows it.
#include "baize/wasm/functions.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace {

using nlohmann::json;

std::string uuid(int number) {
  return "0190a0b0-0000-7000-8000-0000000000" + std::to_string(number);
}

json entry(int number, const char* kind, int thing, const json& set, const json& over = {}) {
  return {{"id", uuid(number)},
          {"phone", uuid(10)},
          {"at", "2026-05-03T07:10:31.250Z"},
          {"by", number % 2 == 0 ? "ann" : "bea"},
          {"kind", kind},
          {"thing", uuid(thing)},
          {"set", set},
          {"over", over.is_null() ? json::array() : over}};
}

json called(const char* name, const json& entries) {
  const json takes = {{"entries", entries}, {"today", "2026-05-03"}};
  return json::parse(baize::wasm::call(name, takes.dump()));
}

const json kVisit = {{"club", "oakley"}, {"green", "7"}, {"observer", "ann"},
                     {"from", "07:10"},  {"done", true}, {"day", "2026-05-03"}};
json roll(int order, int score) {
  return {{"visit", uuid(50)}, {"spot", "A"},     {"direction", "out"},    {"order", order},
          {"score", score},    {"distance", 3.1}, {"marks", json::array()}};
}

TEST(PhoneFold, TwoPhonesAtOnceAreAConflictAndAThirdSolvesIt) {
  json entries = {entry(20, "roll", 60, {{"score", 7}}),
                  entry(21, "roll", 60, {{"score", 8}}, {uuid(20)}),
                  entry(22, "roll", 60, {{"score", 9}}, {uuid(20)})};
  json found = called("fold", entries)["ok"];
  ASSERT_EQ(found["conflicts"].size(), 1U);
  EXPECT_EQ(found["conflicts"][0]["field"], "score");
  EXPECT_EQ(found["conflicts"][0]["values"].size(), 2U);
  EXPECT_EQ(found["conflicts"][0]["values"][0]["by"], "bea");
  EXPECT_EQ(found["things"][0]["values"]["score"], 9);
  EXPECT_EQ(found["things"][0]["heads"], (json{uuid(21), uuid(22)}));
  entries.push_back(entry(23, "roll", 60, {{"score", 8}}, {uuid(21), uuid(22)}));
  found = called("fold", entries)["ok"];
  EXPECT_TRUE(found["conflicts"].empty());
  EXPECT_EQ(found["things"][0]["values"]["score"], 8);
}

TEST(PhoneCheck, AWholeVisitHasNoProblem) {
  const json found =
      called("check_visit", {entry(20, "visit", 50, kVisit), entry(21, "roll", 60, roll(1, 9)),
                             entry(22, "roll", 61, roll(2, 9))});
  EXPECT_EQ(found, (json{{"ok", {{"problems", json::array()}, {"remarks", json::array()}}}}));
}

TEST(PhoneCheck, SaysWhatIsWrongAndWhatToLookAt) {
  const json found =
      called("check_visit", {entry(20, "visit", 50, kVisit), entry(21, "roll", 60, roll(1, 11)),
                             entry(22, "roll", 61, roll(2, 5))})["ok"];
  ASSERT_EQ(found["problems"].size(), 1U) << found;
  EXPECT_EQ(found["problems"][0]["code"], "score_out_of_range");
  EXPECT_EQ(found["remarks"].size(), 2U) << found; // both scores against no marks
  json tomorrow = kVisit;
  tomorrow["day"] = "2026-05-04";
  const json late = called(
      "check_visit", {entry(20, "visit", 50, tomorrow), entry(21, "roll", 60, roll(1, 9))})["ok"];
  ASSERT_EQ(late["problems"].size(), 1U) << late;
  EXPECT_EQ(late["problems"][0]["code"], "future_visit");
}

TEST(PhoneCheck, ARollWithoutItsVisitIsTold) {
  const json found = called("check_visit", json::array({entry(21, "roll", 60, roll(1, 9))}))["ok"];
  ASSERT_EQ(found["problems"].size(), 1U) << found;
  EXPECT_EQ(found["problems"][0]["code"], "no_such_visit");
}

TEST(PhoneCheck, RefusesEntriesThatAreNone) {
  EXPECT_EQ(called("fold", {{{"id", "x"}}})["problem"]["code"], "member_missing");
  EXPECT_EQ(called("fold", json())["problem"]["code"], "missing_value");
  const json takes = {{"entries", json::array()}, {"today", "3 May"}};
  const json found = json::parse(baize::wasm::call("check_visit", takes.dump()));
  EXPECT_EQ(found["problem"]["code"], "not_a_day");
  EXPECT_EQ(found["problem"]["field"], "today");
}

} // namespace
