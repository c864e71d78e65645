// Each function on cases worked by pencil.
#include "baize/wasm/functions.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>

namespace {

using nlohmann::json;

json given(const std::string& name, const std::string& takes) {
  return json::parse(baize::wasm::call(name, takes));
}
json ok(const std::string& name, const std::string& takes) {
  const json answer = given(name, takes);
  EXPECT_TRUE(answer.contains("ok")) << answer;
  return answer.value("ok", json::object());
}
json problem(const std::string& name, const std::string& takes) {
  const json answer = given(name, takes);
  EXPECT_TRUE(answer.contains("problem")) << answer;
  return answer.value("problem", json::object());
}

TEST(PhoneOffer, FollowsTheMarks) {
  EXPECT_EQ(ok("offer", R"({"marks":[]})"), (json{{"score", 9}, {"lowest", 9}, {"highest", 10}}));
  EXPECT_EQ(ok("offer", R"({"marks":[{"kind":"snake"},{"kind":"chatter","seconds":1.2}]})"),
            (json{{"score", 7}, {"lowest", 6}, {"highest", 7}}));
}

TEST(PhoneOffer, SuggestsNothingWhereNobodyWatched) {
  const json wanted = {{"score", nullptr}, {"lowest", 1}, {"highest", 10}};
  EXPECT_EQ(ok("offer", R"({"marks":null})"), wanted);
  EXPECT_EQ(ok("offer", "{}"), wanted);
}

TEST(PhoneOffer, NamesTheMarkThatIsWrong) {
  const json found = problem("offer", R"({"marks":[{"kind":"snake"},{"kind":"hop"}]})");
  EXPECT_EQ(found["code"], "not_a_known_word");
  EXPECT_EQ(found["sentence"],
            "marks 2: kind is 'hop', but must be one of bobble, chatter, snake.");
  EXPECT_EQ(problem("offer", R"({"marks":[{"kind":"snake","seconds":61}]})")["code"],
            "mark_time_out_of_range");
}

TEST(PhoneContradicts, PointsOutAndSaysWhatWasExpected) {
  EXPECT_EQ(ok("contradicts", R"({"marks":[{"kind":"bobble"}],"score":8})"),
            (json{{"contradicts", true},
                  {"remark", "score is '8'; expected 1 to 6 by the marks of the roll."}}));
  const json fine = {{"contradicts", false}, {"remark", nullptr}};
  EXPECT_EQ(ok("contradicts", R"({"marks":[{"kind":"bobble"}],"score":6})"), fine);
  EXPECT_EQ(ok("contradicts", R"({"marks":null,"score":3})"), fine);
  EXPECT_EQ(ok("contradicts", R"({"marks":null,"score":null})"), fine);
  EXPECT_EQ(problem("contradicts", R"({"marks":[],"score":11})")["code"], "score_out_of_range");
  EXPECT_EQ(problem("contradicts", R"({"marks":[],"score":7.5})")["code"], "not_a_whole_number");
}

TEST(PhonePlace, IsHalfwayInTimeThreeQuartersOfTheWay) {
  // x = v0 t - a t^2 / 2; at half the time of a roll of S it is 3/4 S.
  const double end = 2 * 3.0 / 1.8288;
  const json takes = {{"seconds", end / 2}, {"distance", 3}};
  EXPECT_NEAR(ok("place_of_mark", takes.dump())["metres"], 2.25, 1e-12);
  // The thumb's 0.1 s at half the release speed.
  EXPECT_NEAR(ok("place_of_mark", takes.dump())["error"], 0.1 * 1.8288 / 2, 1e-12);
}

TEST(PhonePlace, SaysNothingOfTheRampsOwnHops) {
  EXPECT_EQ(ok("place_of_mark", R"({"seconds":0.2,"distance":3})")["metres"], nullptr);
  EXPECT_EQ(problem("place_of_mark", R"({"seconds":9,"distance":3})")["code"], "mark_after_rest");
  EXPECT_EQ(problem("place_of_mark", R"({"seconds":1})")["code"], "missing_value");
}

TEST(PhoneRun, AddsUp) {
  const json found = ok("run_summary", R"({"rolls":[
    {"distance":3.0,"score":8,"marks":[{"kind":"snake"}]},
    {"distance":3.3,"score":9,"marks":[]}, {"distance":3.0,"score":7}, {}]})");
  EXPECT_EQ(found["total"], 24);
  EXPECT_EQ(found["scored"], 3);
  EXPECT_EQ(found["mean"], 8);
  EXPECT_NEAR(found["spread_m"], 0.3, 1e-12);
  EXPECT_NEAR(found["distance_mean"], 3.1, 1e-12);
  EXPECT_EQ(found["measured"], 3);
  EXPECT_EQ(found["remarks"], (json{"out: distance is '30 cm apart'; expected within 20.32 cm (8 "
                                    "in) of each other: roll again."}));
}

TEST(PhoneRun, WithoutRollsHasNoFigures) {
  const json found = ok("run_summary", R"({"rolls":[]})");
  EXPECT_EQ(found["total"], nullptr);
  EXPECT_EQ(found["mean"], nullptr);
  EXPECT_EQ(found["distance_mean"], nullptr);
  EXPECT_EQ(ok("run_summary", R"({"rolls":null,"total":25,"total_of":3})")["total"], 25);
  EXPECT_EQ(problem("run_summary", R"({"rolls":[],"total":31,"total_of":3})")["code"],
            "total_out_of_range");
  EXPECT_EQ(
      problem("run_summary", R"({"rolls":[{"order":1,"score":8},{"order":1,"score":8}]})")["code"],
      "order_twice");
}

TEST(PhoneSpot, MeanOfDirectionsAndNothingToCompareWith) {
  const json found = ok("spot_summary", R"({"out":[{"distance":3,"score":8}],
    "back":[{"distance":3.2,"score":9}],"last":null})");
  EXPECT_EQ(found["score"]["mean"], 8.5);
  EXPECT_EQ(found["score"]["out"]["total"], 8);
  EXPECT_NEAR(found["speed"]["metres"], 3.1, 1e-12);
  EXPECT_EQ(found["speed"]["method"], "plain_mean");
  EXPECT_EQ(found["speed"]["slope_class"], "gentle");
  // One roll each way: sqrt(0.1^2 (1/4 + 1/4) + 0.0025^2).
  EXPECT_NEAR(found["speed"]["error"], std::sqrt(0.005 + 0.0025 * 0.0025), 1e-12);
  EXPECT_EQ(found["change"]["real"], nullptr);
  EXPECT_EQ(found["change"]["sentence"], "No earlier reading to compare with.");
}

TEST(PhoneSpot, TellsARealChangeFromChance) {
  const std::string now = R"({"out":[{"distance":3.5},{"distance":3.5},{"distance":3.5}],
    "back":[{"distance":3.5},{"distance":3.5},{"distance":3.5}],"unit":"cm","last":)";
  const json by_rolls = ok("spot_summary", now + R"({"out":[{"distance":3},{"distance":3},
    {"distance":3}],"back":[{"distance":3},{"distance":3},{"distance":3}]}})");
  EXPECT_EQ(by_rolls["change"]["real"], true);
  EXPECT_NEAR(by_rolls["change"]["metres"], 0.5, 1e-12);
  EXPECT_EQ(by_rolls["change"]["sentence"],
            "50 cm faster than the last reading (300 cm): a real change.");
  const json near = ok("spot_summary", now + R"({"metres":3.52,"error":0.04}})");
  EXPECT_EQ(near["change"]["real"], false);
  EXPECT_EQ(near["change"]["sentence"],
            "2 cm slower than the last reading (352 cm): cannot be told apart.");
  const json unsure = ok("spot_summary", now + R"({"metres":3.0}})");
  EXPECT_EQ(unsure["change"]["real"], nullptr);
  EXPECT_NEAR(unsure["change"]["metres"], 0.5, 1e-12);
  EXPECT_EQ(problem("spot_summary", now + R"({"metres":31}})")["code"], "distance_out_of_range");
}

TEST(PhoneLength, IsReadAndShown) {
  EXPECT_NEAR(ok("parse_length", R"({"text":"10'2\"","unit":"ft_in"})")["metres"], 3.0988, 1e-12);
  EXPECT_NEAR(ok("parse_length", R"({"text":"3,11","unit":"m","decimal":","})")["metres"], 3.11,
              1e-12);
  const json found = problem("parse_length", R"({"text":"ten","unit":"m"})");
  EXPECT_EQ(found["code"], "not_a_length");
  EXPECT_EQ(found["field"], "text");
  EXPECT_EQ(ok("show_length", R"({"metres":3.0988,"unit":"ft_in"})")["text"], "10'2\"");
  EXPECT_EQ(ok("show_length", R"({"metres":3.114,"unit":"m","decimal":","})")["text"], "3,11 m");
  EXPECT_EQ(problem("show_length", R"({"metres":3,"unit":"ell"})")["code"], "not_a_known_word");
  EXPECT_EQ(problem("show_length", R"({"metres":1e300,"unit":"ft"})")["code"],
            "length_out_of_range");
}

TEST(PhoneFields, AreThoseOfTheTables) {
  const json found = ok("fields", "{}");
  EXPECT_EQ(found["measured"][0]["name"], "distance");
  EXPECT_EQ(found["measured"][0]["rule"]["clause"], "a number above 0 and up to 30 m");
  EXPECT_EQ(found["works"][0]["name"], "coring");
  EXPECT_EQ(found["works"][0]["parameters"][0]["leading"], true);
}

} // namespace
