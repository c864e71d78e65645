#include "unit/green_samples.h"
#include "unit/special.h"

#include <functional>

namespace {

using namespace baize;
using green::Records;

using special::kNan;

struct Case {
  const char* code;
  std::function<void(Records&)> spoil;
};

green::Reading moisture() {
  green::Reading reading;
  reading.id = "r1";
  reading.green = "7";
  reading.day = samples::kToday;
  reading.kind = "soil_moisture";
  reading.value = 18.5;
  reading.rod_length_mm = 60;
  return reading;
}
void reading(Records& r, const std::function<void(green::Reading&)>& change) {
  r.readings = {moisture()};
  change(r.readings[0]);
}
void fixture(Records& r, const std::function<void(green::Fixture&)>& change) {
  green::Fixture f;
  f.id = "f1";
  f.days = {samples::kToday, samples::kToday};
  change(f);
  r.fixtures = {f};
}
void standard(Records& r, const green::Standard& s) {
  r.standards = {s};
}
void second_visit(Records& r, units::Minute from, std::optional<units::Minute> to) {
  r.visits.push_back(samples::visit());
  r.visits[1].id = "v2";
  r.visits[1].green = "8";
  r.visits[1].from = from;
  r.visits[1].to = to;
}

const Case kCases[] = {
    {"unknown_green", [](Records& r) { r.visits[0].green = "9"; }},
    {"unknown_half", [](Records& r) { r.visits[0].half = "east"; }},
    {"unknown_spot", [](Records& r) { r.visits[0].runs[0].spot = "C"; }},
    {"unknown_observer", [](Records& r) { r.visits[0].observer = "bob"; }},
    {"unknown_green", [](Records& r) { r.works[0].greens = {"9"}; }},
    {"unknown_half", [](Records& r) { r.works[0].half = "east"; }},
    {"unknown_half",
     [](Records& r) {
       r.works[0].greens.clear();
       r.works[0].half = "east";
     }},
    {"unknown_green", [](Records& r) { reading(r, [](auto& x) { x.green = "9"; }); }},
    {"unknown_spot", [](Records& r) { reading(r, [](auto& x) { x.spot = "C"; }); }},
    {"unknown_observer", [](Records& r) { reading(r, [](auto& x) { x.observer = "bob"; }); }},
    {"future_reading", [](Records& r) { reading(r, [](auto& x) { ++x.day; }); }},
    {"unknown_kind",
     [](Records& r) {
       reading(r, [](auto& x) {
         x.kind = "colour";
         x.rod_length_mm.reset();
       });
     }},
    {"value_out_of_range", [](Records& r) { reading(r, [](auto& x) { x.value = 101; }); }},
    {"value_out_of_range", [](Records& r) { reading(r, [](auto& x) { x.value = kNan; }); }},
    {"rod_length_out_of_range",
     [](Records& r) { reading(r, [](auto& x) { x.rod_length_mm = 6; }); }},
    {"rod_length_not_used",
     [](Records& r) { reading(r, [](auto& x) { x.kind = "thatch_depth"; }); }},
    {"id_twice", [](Records& r) { r.works.push_back(r.works[0]); }},
    {"id_twice", [](Records& r) { r.observers.push_back(r.observers[0]); }},
    {"missing_id", [](Records& r) { r.observers[0] = {}, r.visits[0].observer.clear(); }},
    {"ends_before_it_begins",
     [](Records& r) { fixture(r, [](auto& f) { f.days.last = f.days.first - 1; }); }},
    {"importance_out_of_range", [](Records& r) { fixture(r, [](auto& f) { f.importance = 4; }); }},
    {"score_out_of_range", [](Records& r) { fixture(r, [](auto& f) { f.score_wanted = 0.5; }); }},
    {"speed_out_of_range",
     [](Records& r) { fixture(r, [](auto& f) { f.speed_wanted = units::Length{0}; }); }},
    {"score_out_of_range", [](Records& r) { standard(r, {"", {}, {}, 11, {}}); }},
    {"half_a_season", [](Records& r) { standard(r, {"", units::MonthDay{4, 1}, {}, 8, {}}); }},
    {"not_a_month_day",
     [](Records& r) { standard(r, {"", units::MonthDay{4, 31}, units::MonthDay{9, 30}, 8, {}}); }},
    {"unknown_green", [](Records& r) { standard(r, {"9", {}, {}, 8, {}}); }},
    {"standard_twice",
     [](Records& r) { r.standards = {{"", {}, {}, 8, {}}, {"", {}, {}, 7, {}}}; }},
    {"area_out_of_range", [](Records& r) { r.greens[0].area_m2 = 0; }},
    {"bearing_out_of_range", [](Records& r) { r.greens[0].spots[0].bearing_deg = 361; }},
    {"bearing_out_of_range", [](Records& r) { r.greens[0].spots[0].bearing_deg = kNan; }},
    {"unknown_half", [](Records& r) { r.greens[0].spots[0].half = "east"; }},
    {"half_twice", [](Records& r) { r.greens[0].halves.push_back("north"); }},
    {"missing_half", [](Records& r) { r.greens[0].halves.push_back(""); }},
    {"spot_twice", [](Records& r) { r.greens[0].spots.push_back({"A", {}, ""}); }},
    {"missing_spot", [](Records& r) { r.greens[0].spots.push_back({"", {}, ""}); }},
    {"latitude_out_of_range", [](Records& r) { r.club.latitude_deg = 90.5; }},
    {"longitude_out_of_range", [](Records& r) { r.club.longitude_deg = kNan; }},
    {"elevation_out_of_range", [](Records& r) { r.club.elevation_m = 9000; }},
    {"missing_id",
     [](Records& r) {
       r.club.id.clear();
       r.club.name = "Hill";
     }},
    {"two_visits_at_once",
     [](Records& r) { second_visit(r, samples::at(7, 9), samples::at(7, 20)); }},
    {"two_visits_at_once", [](Records& r) { second_visit(r, samples::at(7, 0), {}); }},
    {"two_visits_at_once",
     [](Records& r) { second_visit(r, samples::at(6, 50), samples::at(7, 1)); }},
    {"two_visits_at_once",
     [](Records& r) { second_visit(r, samples::at(6, 50), samples::at(7, 30)); }},
};

TEST(RecordsRules, TheSampleIsValid) {
  auto r = samples::records();
  r.readings = {moisture()};
  EXPECT_EQ(samples::codes(validate(r, samples::kToday)), std::vector<std::string>{});
}

TEST(RecordsRules, EachIsNamedByItsCode) {
  for (const Case& one : kCases) {
    SCOPED_TRACE(one.code);
    Records r = samples::records();
    one.spoil(r);
    samples::expect_only(validate(r, samples::kToday), one.code);
  }
}

TEST(RecordsRules, VisitsOneAfterTheOtherAreAllowed) {
  Records r = samples::records();
  second_visit(r, samples::at(7, 10), samples::at(7, 20)); // begins as the first ends
  EXPECT_TRUE(validate(r, samples::kToday).empty());
  r.visits[1].from = samples::at(7, 5);
  r.visits[1].day = samples::kToday - 1; // another day
  EXPECT_TRUE(validate(r, samples::kToday).empty());
  r.visits[1].day = samples::kToday;
  r.visits[1].observer.clear(); // nobody knows who
  EXPECT_TRUE(validate(r, samples::kToday).empty());
  r.observers.push_back({"bob", "", {}, {}});
  r.visits[1].observer = "bob"; // two people
  EXPECT_TRUE(validate(r, samples::kToday).empty());
}

TEST(RecordsRules, ALongVisitIsMetByEveryShortOneWithin) {
  Records r = samples::records();
  r.visits[0].to = samples::at(9, 0);
  for (int i = 0; i < 3; ++i) {
    auto v = samples::visit();
    v.id = "w" + std::to_string(i);
    v.from = samples::at(7, 20 + 20 * i);
    v.to = samples::at(7, 25 + 20 * i <= 59 ? 25 + 20 * i : 59);
    v.from = std::min(*v.from, *v.to);
    r.visits.push_back(v);
  }
  EXPECT_EQ(samples::codes(validate(r, samples::kToday)),
            (std::vector<std::string>(3, "two_visits_at_once")));
}

TEST(RecordsRules, AClubThatListsNoSpotsOrObserversTakesAny) {
  Records r = samples::records();
  r.observers.clear();
  r.greens[0].spots.clear();
  r.visits[0].observer = "anyone";
  r.visits[0].runs[0].spot = "by the bunker";
  EXPECT_TRUE(validate(r, samples::kToday).empty());
}

TEST(RecordsRules, TheOtherPlaceOfAnIdIsNamed) {
  Records r = samples::records();
  r.works[0].source = {"works.csv", 3};
  r.works.push_back(r.works[0]);
  r.works[1].source.line = 8;
  const auto problems = validate(r, samples::kToday);
  ASSERT_EQ(problems.size(), 1U);
  EXPECT_EQ(units::sentence(problems[0]), "works.csv line 8: id is 'w1', but must be used once "
                                          "only (already in works.csv line 3).");
}

} // namespace
