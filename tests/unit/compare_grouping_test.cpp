#include "baize/compare/gather.h"

#include <gtest/gtest.h>

#include <limits>

namespace {

using namespace baize;
using compare::Grouping;

units::Day day(int number) {
  return *units::parse_iso_day("2024-03-01") + number;
}

green::Work work(const std::string& id, const std::string& kind, int on,
                 std::vector<green::Parameter> parameters = {}) {
  green::Work out;
  out.id = id;
  out.kind = kind;
  out.day = day(on);
  out.parameters = std::move(parameters);
  return out;
}

std::string method(const green::Work& one, const Grouping& grouping,
                   const std::vector<green::Work>& works = {}) {
  EXPECT_FALSE(grouping.problem());
  return compare::method_of(one, "1", works, grouping);
}

TEST(CompareGrouping, AMethodIsTheKindPartedByWhatIsAsked) {
  const auto coring =
      work("a", "coring", 0, {{"tine_diameter", 8, ""}, {"sand_order", std::nullopt, "before"}});
  EXPECT_EQ(method(coring, {}), "coring");
  EXPECT_EQ(method(coring, {"coring", "tine_diameter"}), "coring, tine diameter 8 mm");
  EXPECT_EQ(method(coring, {"", "sand_order"}), "coring, sand order before");
  EXPECT_EQ(method(coring, {"", "sand"}), "coring, sand not stated");
  EXPECT_EQ(method(work("b", "drainage", 0), {"", "tine_diameter"}), "drainage");
}

TEST(CompareGrouping, ABandBeginsAtItsCut) {
  const Grouping grouping{"", "tine_diameter", {8, 12}};
  const auto with = [&](double mm) {
    return method(work("a", "coring", 0, {{"tine_diameter", mm, ""}}), grouping);
  };
  EXPECT_EQ(with(7.5), "coring, tine diameter under 8 mm");
  EXPECT_EQ(with(8), "coring, tine diameter 8 to under 12 mm");
  EXPECT_EQ(with(12), "coring, tine diameter 12 mm or more");
}

TEST(CompareGrouping, WorksAlongsidePart) {
  const auto coring = work("a", "coring", 10);
  const Grouping grouping{"", "", {}, {"brushing", "blowing"}};
  EXPECT_EQ(method(coring, grouping, {work("b", "brushing", 13), work("c", "blowing", 14)}),
            "coring with brushing");
  EXPECT_EQ(method(coring, grouping, {work("b", "brushing", 9), work("c", "blowing", 10)}),
            "coring with brushing and blowing");
  EXPECT_EQ(method(coring, grouping, {work("b", "brushing", 8)}),
            "coring without brushing or blowing");
}

TEST(CompareGrouping, RefusesInOneSentence) {
  const auto code = [](const Grouping& grouping) { return grouping.problem()->code; };
  EXPECT_EQ(code({"ploughing"}), "unknown_kind");
  EXPECT_EQ(code({"", "", {}, {"ploughing"}}), "unknown_kind");
  EXPECT_EQ(code({"coring", "bulk_density"}), "not_a_parameter");
  EXPECT_EQ(code({"coring", "sand_order", {3}}), "not_a_parameter");
  EXPECT_EQ(code({"coring", "sand", {3, 3}}), "cuts_out_of_order");
  EXPECT_EQ(code({"", "", {}, {"brushing"}, -1}), "alongside_out_of_range");
  compare::GatherOptions options;
  options.growth_window_days = 0;
  EXPECT_EQ(options.problem()->code, "growth_window_out_of_range");
}

green::Visit visit(const std::string& id, int on, int score) {
  green::Visit out;
  out.id = id;
  out.green = "1";
  out.day = day(on);
  green::Run run;
  for (int i = 0; i < 3; ++i) {
    green::Roll roll;
    roll.score = score;
    run.rolls.push_back(roll);
  }
  out.runs = {run};
  return out;
}

/// One green: 9 before, coring on day 10, seen at 6 on day 12, 8 on day 20; another
/// coring on day 40 that nobody looked at, and one to come.
green::Records share() {
  green::Records out;
  out.club.id = "larch";
  out.greens.resize(1);
  out.greens[0].id = "1";
  out.visits = {visit("v1", 5, 9), visit("v2", 12, 6), visit("v3", 20, 8), visit("v4", 23, 8)};
  out.works = {work("w1", "coring", 10), work("w2", "coring", 40), work("w3", "coring", 90)};
  return out;
}

climate::Weather warm_days(int from, int to) {
  climate::Weather out;
  for (int i = from; i <= to; ++i) {
    climate::WeatherDay one;
    one.day = day(i);
    one.tmean_c = 20; // the growth potential of cool-season grass is 1
    out[one.day] = one;
  }
  return out;
}

TEST(CompareGather, OneGreenByHand) {
  compare::Gathered gathered;
  compare::gather(share(), warm_days(0, 60), day(60), {}, gathered);
  EXPECT_EQ(gathered.plans, std::set<std::string>{"larch/w3"});
  EXPECT_EQ(gathered.not_looked_at, 1);
  ASSERT_EQ(gathered.looks.size(), 1U);
  const compare::Look& look = gathered.looks[0];
  EXPECT_EQ(look.method, "coring");
  EXPECT_EQ(look.days, (stats::CensoredTime{2, 10}));
  EXPECT_EQ(look.growth_days, (stats::CensoredTime{2, 10}));
  EXPECT_EQ(look.growth, 1);
  EXPECT_EQ(look.before, 9);
  EXPECT_EQ(look.depth, 3);
  EXPECT_EQ(look.works, std::vector<std::string>{"w1"});
}

TEST(CompareGather, WithoutWeatherNoGrowth) {
  compare::Gathered gathered;
  compare::gather(share(), {}, day(60), {}, gathered);
  ASSERT_EQ(gathered.looks.size(), 1U);
  EXPECT_FALSE(gathered.looks[0].growth_days);
  EXPECT_FALSE(gathered.looks[0].growth);
}

TEST(CompareGather, WorksOfOneDayMakeOneMethod) {
  green::Records records = share();
  records.works.push_back(work("w0", "scarifying", 10));
  compare::Gathered gathered;
  compare::gather(records, {}, day(30), {}, gathered);
  ASSERT_EQ(gathered.looks.size(), 1U);
  EXPECT_EQ(gathered.looks[0].method, "coring + scarifying");
  EXPECT_EQ(gathered.looks[0].works.size(), 2U);
}

TEST(CompareGather, OwnLevelIsNotAskedWithoutAScoreBefore) {
  green::Records records = share();
  records.visits.erase(records.visits.begin());
  compare::GatherOptions options;
  options.definition = recovery::Definition::own_level;
  compare::Gathered gathered;
  compare::gather(records, {}, day(30), options, gathered);
  EXPECT_TRUE(gathered.looks.empty());
  EXPECT_EQ(gathered.no_score_before, 1);
}

} // namespace
