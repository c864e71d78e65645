#include "baize/green/work.h"
#include "unit/green_samples.h"
#include "unit/special.h"

#include <functional>

namespace {

using namespace baize;
using green::Work;
using green::WorkClass;

using special::kNan;

struct WorkCase {
  const char* code;
  std::function<void(Work&)> spoil;
};

const WorkCase kWorkCases[] = {
    {"missing_id", [](Work& w) { w.id.clear(); }},
    {"unknown_kind", [](Work& w) { w.kind = "spiking"; }},
    {"unknown_parameter", [](Work& w) { w.parameters[0].name = "tine"; }},
    {"parameter_twice", [](Work& w) { w.parameters.push_back(w.parameters[0]); }},
    {"parameter_out_of_range", [](Work& w) { w.parameters[0].number = 0; }},
    {"parameter_out_of_range", [](Work& w) { w.parameters[0].number = 41; }},
    {"parameter_out_of_range", [](Work& w) { w.parameters[0].number = kNan; }},
    {"parameter_out_of_range", [](Work& w) { w.parameters[0].number.reset(); }},
    {"parameter_out_of_range", [](Work& w) { w.parameters[0].word = "wide"; }},
    {"parameter_out_of_range", [](Work& w) { w.parameters[1].word = "middle"; }},
    {"parameter_out_of_range", [](Work& w) { w.parameters[1].number = 1; }},
    {"ends_before_it_begins", [](Work& w) { w.until = w.day - 1; }},
    {"plan_too_far", [](Work& w) { w.day = samples::kToday + 5 * 366 + 1; }},
    {"plan_too_far", [](Work& w) { w.until = samples::kToday + 5 * 366 + 1; }},
    {"not_a_time", [](Work& w) { w.at = units::Minute{-1}; }},
    {"green_twice", [](Work& w) { w.greens = {"7", "7"}; }},
    {"missing_green", [](Work& w) { w.greens = {""}; }},
    {"closing_is_not_disruptive",
     [](Work& w) {
       w.kind = "closed";
       w.parameters.clear();
       w.disruptive = true;
     }},
};

TEST(WorkRules, EachIsNamedByItsCode) {
  EXPECT_TRUE(validate(samples::work(), samples::kToday).empty());
  for (const WorkCase& one : kWorkCases) {
    SCOPED_TRACE(one.code);
    Work w = samples::work();
    one.spoil(w);
    samples::expect_only(validate(w, samples::kToday), one.code);
  }
}

TEST(WorkRules, APlanIsAllowed) {
  Work w = samples::work();
  w.day = samples::kToday + 200;
  w.until = w.day + 2;
  EXPECT_TRUE(validate(w, samples::kToday).empty());
}

TEST(WorkClassOf, TheWorksOwnSayStandsBeforeItsKinds) {
  Work w = samples::work();
  EXPECT_EQ(class_of(w), WorkClass::disruptive);
  w.disruptive = false;
  EXPECT_EQ(class_of(w), WorkClass::routine);
  w.kind = "topdressing";
  w.disruptive.reset();
  EXPECT_EQ(class_of(w), WorkClass::routine);
  w.disruptive = true;
  EXPECT_EQ(class_of(w), WorkClass::disruptive);
}

TEST(WorkClassOf, AClosedGreenIsClosedWhateverTheWorkSays) {
  Work w = samples::work();
  w.kind = "closed";
  EXPECT_EQ(class_of(w), WorkClass::closing);
  w.disruptive = false;
  EXPECT_EQ(class_of(w), WorkClass::closing);
}

TEST(Touches, GreensAndHalves) {
  Work w = samples::work();
  EXPECT_TRUE(touches(w, "7"));
  EXPECT_TRUE(touches(w, "7", "north"));
  EXPECT_FALSE(touches(w, "8"));
  w.half = "north";
  EXPECT_TRUE(touches(w, "7")) << "any part of the green";
  EXPECT_TRUE(touches(w, "7", "north"));
  EXPECT_FALSE(touches(w, "7", "south"));
  w.greens.clear();
  EXPECT_TRUE(touches(w, "8", "north")) << "no green named: every green";
}

} // namespace
