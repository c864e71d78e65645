// Every result as JSON, against surfaces/api/openapi.yaml: once with all it can
// hold and once with nothing known.
#include "api_contract.h"
#include "baize/answers/fields.h"
#include "baize/answers/greens_review.h"
#include "baize/answers/imported.h"
#include "baize/answers/problem.h"
#include "baize/answers/records_view.h"
#include "baize/answers/report_data.h"
#include "baize/answers/season_review.h"
#include "baize/answers/store.h"
#include "baize/answers/visit.h"
#include "baize/answers/work.h"
#include "baize/answers/work_review.h"
#include "unit/special.h"

#include <gtest/gtest.h>

namespace {

using namespace baize;
using answers::Json;
using special::kInfinity;
using special::kNan;

const units::Day kDay = *units::make_day(2025, 4, 7);

template <class T> std::string faults(const std::string& schema, const T& result) {
  return contract::faults(schema, answers::text(answers::to_json(result)));
}

speed::VisitSpeed a_speed() {
  return {3.05, 0.04, 2, true, {"one spot is steep"}};
}

green::Visit a_visit() {
  green::Roll watched{1, units::from_metres(3.1), std::vector<green::Mark>{}, 9};
  green::Roll marked{2, {}, std::vector<green::Mark>{{green::MarkKind::bobble, 0.7}, {}}, {}};
  green::Run run{"A", green::Direction::back, {watched, marked, {3, {}, {}, {}}}, 25, 3};
  return {"v:1",
          "7",
          "north",
          "ana",
          kDay,
          units::Minute{425},
          units::Minute{440},
          "walk 1",
          {1.5, 2.0, "heavy", "calm", "wet"},
          {run},
          "note",
          {"rolls.csv", 12}};
}

green::Work a_work() {
  return {"w/1",
          "coring",
          kDay,
          kDay + 1,
          units::Minute{420},
          {"7"},
          "north",
          true,
          {{"tine_diameter", 13.0, ""}, {"diameter_measured", {}, "outside"}},
          "n",
          {"works.csv", 2}};
}

recovery::WorkLoss a_loss() {
  recovery::WorkLoss loss;
  loss.work = "w/1";
  loss.kind = "coring";
  loss.green = "7";
  loss.day = kDay;
  loss.horizon = kDay + 60;
  loss.before = 9;
  loss.before_visits = {"v:0"};
  loss.trough = 5.5;
  loss.trough_day = kDay + 2;
  loss.depth = 3.5;
  for (std::size_t i = 0; i < loss.recovery.size(); ++i) {
    loss.recovery[i] = {recovery::kDefinitions[i],
                        recovery::Censoring::none,
                        kDay + 8,
                        kDay + 11,
                        8,
                        11,
                        5.5,
                        7.25,
                        {2, 2},
                        9,
                        {"v:1"}};
  }
  loss.area = recovery::LossArea{30, 20, 45, 18.5, true};
  loss.visits_after = 9;
  loss.notes = {"no visit on the day"};
  return loss;
}

TEST(Answers, SeasonReview) {
  services::SeasonReview review;
  review.period = units::calendar_year(2025);
  review.year = 2025;
  EXPECT_EQ(faults("SeasonReview", review), "");
  review.visits = {
      {"v:1", kDay, units::Minute{425}, "ana", "north", 8.5, 7.0, 9.0, 6, a_speed(), 1},
      {"v:2", kDay, {}, "ben", "", {}, {}, {}, 0, {}, 0}};
  review.works = {{"w/1", "coring", "coring 13 mm", kDay, kDay + 1, "", green::WorkClass::closing},
                  {"w/2", "rolling", "rolling", kDay, {}, "", green::WorkClass::routine}};
  review.weather = {{kDay, 0.6, 3.0, 4.0, 12.0}, {kDay + 1, {}, {}, {}, {}}};
  review.standards = {{kDay, 8}};
  review.fixtures = {{"f1", "Cup", {kDay, kDay + 1}, 3, 8.5, units::from_metres(3.2), {}},
                     {"f2", "Day", {kDay, kDay}, 1, {}, {}, {}}};
  review.ledger.days = {recovery::DayKind::measured_true, recovery::DayKind::closed};
  review.losses = {a_loss(), {}};
  EXPECT_EQ(faults("SeasonReview", review), "");
}

TEST(Answers, LedgerCountsAreThoseOfItsMembers) {
  recovery::Ledger ledger;
  ledger.measured_true = 5;
  ledger.measured_not = 3;
  ledger.between_true = 2;
  ledger.unmeasured = 4;
  ledger.closed = 1;
  services::SeasonReview review;
  review.ledger = ledger;
  const Json json = answers::to_json(review)["ledger"];
  EXPECT_EQ(json["open"], 14);
  EXPECT_EQ(json["fewest_true"], 5);
  EXPECT_EQ(json["most_true"], 11);
}

TEST(Answers, GreensReview) {
  services::GreensReview review;
  EXPECT_EQ(faults("GreensReview", review), "");
  services::GreenCard card;
  card.green = "7";
  card.last_visit = kDay;
  card.days_since_visit = 3;
  card.score = 7.5;
  card.speed = a_speed();
  card.speed_day = kDay;
  card.at_standard = false;
  card.trend = services::Trend::worse;
  card.trend_points = -0.8;
  card.days_since_work = 12;
  card.recent_scores = {8, 7.5};
  review.years = {2025, 2024};
  review.greens = {card, {}};
  review.median_speed_m = 2.95;
  EXPECT_EQ(faults("GreensReview", review), "");
}

TEST(Answers, WorkReviewAndLines) {
  services::WorkReview review;
  EXPECT_EQ(faults("WorkReview", review), "");
  review.work = a_work();
  review.greens = {{"7th", a_loss(), {{kDay - 3, -3, 9, 6, {"v:0"}}}}};
  EXPECT_EQ(faults("WorkReview", review), "");
  EXPECT_EQ(faults("Works", std::vector<services::WorkLine>{}), "");
  services::WorkLine line;
  line.work = a_work();
  line.label = "coring 13 mm";
  line.work_class = green::WorkClass::disruptive;
  line.greens = 3;
  line.mean_depth = 2.5;
  line.back_after_days = 8;
  line.back_by_days = 21;
  line.back = 2;
  line.back_at_lower_standard = 1;
  line.censored = 1;
  line.mean_score_days = 30.5;
  line.losses_open = 1;
  EXPECT_EQ(faults("Works", std::vector<services::WorkLine>{line, {}}), "");
}

TEST(Answers, Visits) {
  services::VisitPage page;
  EXPECT_EQ(faults("VisitPage", page), "");
  page.visits = {{"v:1",
                  "7",
                  "7th",
                  "north",
                  "ana",
                  kDay,
                  units::Minute{425},
                  6,
                  8.5,
                  a_speed(),
                  1,
                  {"rolls.csv", 12}},
                 {}};
  EXPECT_EQ(faults("VisitPage", page), "");
  services::VisitDetail detail;
  EXPECT_EQ(faults("VisitDetail", detail), "");
  detail.visit = a_visit();
  detail.score = 8.5;
  speed::SpotSpeed speed{speed::RunSpeed{3.2, 0.1, 3, true},
                         speed::RunSpeed{2.4, 0.3, 3, false},
                         2.8,
                         2.743,
                         2.743,
                         0.05,
                         1.33,
                         speed::SlopeClass::gentle,
                         false,
                         true,
                         {"find a flatter place"}};
  detail.spots = {{"A", speed}, {"B", {}}};
  detail.remarks = {{"run_spread", "distance", "0.3 m", "within 0.2 m", "rolls.csv line 12"}};
  EXPECT_EQ(faults("VisitDetail", detail), "");
}

TEST(Answers, UnknownIsAbsentAndNothingSeenIsAnEmptyList) {
  const Json visit = answers::to_json(a_visit());
  const Json& rolls = visit["runs"][0]["rolls"];
  EXPECT_EQ(rolls[0].dump(), R"({"order":1,"distance_m":3.1,"marks":[],"score":9})");
  EXPECT_EQ(rolls[1].dump(),
            R"({"order":2,"marks":[{"kind":"bobble","seconds":0.7},{"kind":"bobble"}]})");
  EXPECT_EQ(rolls[2].dump(), R"({"order":3})");
  EXPECT_EQ(visit["from"], "07:05");
  EXPECT_EQ(visit["day"], "2025-04-07");
}

TEST(Answers, NumbersThatAreNotFiniteAreNeverWritten) {
  services::GreenCard card;
  card.trend_points = kNan;
  card.score = kInfinity;
  card.recent_scores = {8, kNan, -kInfinity, 7};
  services::GreensReview review;
  review.median_speed_m = -kInfinity;
  review.greens = {card};
  EXPECT_EQ(faults("GreensReview", review), "");
  const std::string text = answers::text(answers::to_json(review));
  EXPECT_EQ(text.find("null"), std::string::npos);
  EXPECT_NE(text.find("\"recent_scores\":[8.0,7.0]"), std::string::npos) << text;
}

TEST(Answers, SameResultSameBytesInTheOrderOfTheStruct) {
  const std::string text = answers::text(answers::to_json(a_work()));
  EXPECT_EQ(text, answers::text(answers::to_json(a_work())));
  EXPECT_EQ(
      text.rfind(R"({"id":"w/1","kind":"coring","day":"2025-04-07","until":"2025-04-08",)", 0), 0U)
      << text;
}

TEST(Answers, BytesThatAreNoUtf8BecomeTheReplacementCharacter) {
  green::Visit visit = a_visit();
  visit.note = "gr\xFCn"; // Latin-1
  EXPECT_EQ(Json::parse(answers::text(answers::to_json(visit)))["note"], "gr\xEF\xBF\xBDn");
}

TEST(Answers, StoreResults) {
  EXPECT_EQ(faults("Clubs", std::vector<services::ClubName>{{"c", "Club"}}), "");
  EXPECT_EQ(faults("Receipt", services::Receipt{1, 2, 3}), "");
  const std::vector<services::Revision> revisions{
      {1, "ana", "2025-01-01T00:00:00Z", R"({"a":[1]})"},
      {2, "ben", "2025-01-02T00:00:00Z", "no JSON"}};
  EXPECT_EQ(faults("History", revisions), "");
  const Json json = answers::to_json(revisions);
  EXPECT_EQ(json["revisions"][0]["contents"]["a"][0], 1);
  EXPECT_EQ(json["revisions"][1]["contents"]["text"], "no JSON");
}

TEST(Answers, ReportData) {
  services::ReportData data;
  EXPECT_EQ(faults("ReportData", data), "");
  data.seasons.resize(2);
  data.works.resize(1);
  data.totals.measured_true = 5;
  data.totals.unmeasured = 2;
  data.sentences = {"On 5 green-days the greens were seen to roll true."};
  EXPECT_EQ(faults("ReportData", data), "");
  EXPECT_EQ(answers::to_json(data)["totals"]["most_true"], 7);
}

TEST(Answers, Import) {
  answers::Imported imported{true, {{"rolls.csv", 6, 1, 1}}, {{"a", "b", "c", "d", "e"}}, {}, {},
                             {}};
  EXPECT_EQ(faults("ImportAnswer", imported), "");
  imported.receipt = services::Receipt{1, 0, 0};
  EXPECT_EQ(faults("ImportAnswer", imported), "");
}

TEST(Answers, RefusalHoldsDataAndSentence) {
  const units::Problem problem{"score_out_of_range", "score", "11", "a whole number from 1 to 10",
                               "rolls.csv line 12"};
  const Json json = answers::with_sentence(problem);
  EXPECT_EQ(contract::faults("Refusal", answers::text(json)), "");
  EXPECT_EQ(json["sentence"], units::sentence(problem));
  EXPECT_EQ(json["problem"]["place"], "rolls.csv line 12");
}

TEST(Answers, FieldsAreTheDictionary) {
  const Json json = answers::fields();
  EXPECT_EQ(contract::faults("Fields", answers::text(json)), "");
  const auto named = [](const Json& list, const char* name) {
    return std::find_if(list.begin(), list.end(),
                        [&](const Json& one) { return one["name"] == name; });
  };
  const auto coring = named(json["work_kinds"], "coring");
  ASSERT_NE(coring, json["work_kinds"].end());
  EXPECT_EQ((*coring)["work_class"], "disruptive");
  const auto tine = named((*coring)["parameters"], "tine_diameter");
  ASSERT_NE(tine, (*coring)["parameters"].end());
  EXPECT_EQ((*tine)["rule"]["unit"], "mm");
  const auto score = named(json["measured_fields"], "score");
  ASSERT_NE(score, json["measured_fields"].end());
  EXPECT_EQ((*score)["rule"]["type"], "whole");
  EXPECT_EQ((*score)["rule"]["highest"], 10);
}

// A check that cannot fail is none: the schemas do refuse what is wrong.
TEST(Contract, RefusesWhatItShould) {
  EXPECT_NE(contract::faults("Day", nlohmann::json("7 April")), "");
  EXPECT_NE(contract::faults("Period", std::string(R"({"first":"2025-01-01"})")), "");
  EXPECT_NE(
      contract::faults("Receipt", std::string(R"({"added":1,"corrected":0,"unchanged":0,"x":1})")),
      "");
  EXPECT_NE(contract::faults("WorkClass", nlohmann::json("other")), "");
}

} // namespace
