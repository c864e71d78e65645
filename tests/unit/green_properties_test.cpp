#include "baize/green/kinds.h"
#include "baize/green/roll_score.h"
#include "unit/green_samples.h"
#include "unit/special.h"

#include <rapidcheck/gtest.h>

#include <cmath>

namespace {

using namespace baize;
using special::kInfinity;

green::MarkCount any_count() {
  const auto few = rc::gen::inRange(0, 12);
  return {*few, *few, *few};
}

RC_GTEST_PROP(RollScoreLaws, MoreMarksNeverRaiseTheOffer, ()) {
  const auto less = any_count();
  auto more = less;
  more.bobbles += *rc::gen::inRange(0, 3);
  more.chatters += *rc::gen::inRange(0, 3);
  more.snakes += *rc::gen::inRange(0, 3);
  const auto before = green::offer(less);
  const auto after = green::offer(more);
  RC_ASSERT(after.score <= before.score);
  RC_ASSERT(after.highest <= before.highest);
  RC_ASSERT(after.lowest <= before.lowest);
}

RC_GTEST_PROP(RollScoreLaws, TheOfferLiesInItsBand, ()) {
  const auto offered = green::offer(any_count());
  RC_ASSERT(1 <= offered.lowest && offered.lowest <= offered.score);
  RC_ASSERT(offered.score <= offered.highest && offered.highest <= 10);
}

RC_GTEST_PROP(RollScoreLaws, TheOrderOfRollsAndRunsChangesNoSum, ()) {
  auto visit = samples::visit();
  for (auto& run : visit.runs) {
    for (auto& roll : run.rolls) {
      roll.score = *rc::gen::inRange(1, 11);
    }
  }
  auto turned = visit.runs;
  std::reverse(turned.begin(), turned.end());
  std::reverse(turned[0].rolls.begin(), turned[0].rolls.end());
  const auto a = green::score_sum(visit.runs);
  const auto b = green::score_sum(turned);
  RC_ASSERT(a->total == b->total && a->rolls == b->rolls);
}

/// Writes a number that is not finite, or far outside, into one of the places
/// that hold one.
void spoil(green::Records& r, double bad, int place) {
  auto& visit = r.visits[0];
  switch (place) {
  case 0:
    visit.runs[1].rolls[2].distance = units::Length{bad};
    break;
  case 1:
    visit.runs[0].rolls[1].marks = {{green::MarkKind::snake, bad}};
    break;
  case 2:
    visit.conditions.hours_since_mowing = bad;
    break;
  case 3:
    visit.conditions.hours_since_rolling = bad;
    break;
  case 4:
    r.works[0].parameters[0].number = bad;
    break;
  case 5:
    r.greens[0].area_m2 = bad;
    break;
  case 6:
    r.greens[0].spots[0].bearing_deg = bad;
    break;
  case 7:
    r.club.latitude_deg = bad;
    break;
  case 8:
    r.club.longitude_deg = bad;
    break;
  case 9:
    r.club.elevation_m = bad;
    break;
  case 10:
    r.standards = {{"", {}, {}, bad, {}}};
    break;
  case 11:
    r.fixtures[0].score_wanted = bad;
    break;
  case 12:
    r.fixtures[0].speed_wanted = units::Length{bad};
    break;
  case 13:
    r.readings[0].value = bad;
    break;
  default:
    r.readings[0].rod_length_mm = bad;
    break;
  }
}

RC_GTEST_PROP(RecordsLaws, WhatIsNotFiniteNeverPasses, ()) {
  auto r = samples::records();
  r.fixtures = {{"f", "", {samples::kToday, samples::kToday}, 1, {}, {}, {}}};
  r.readings.resize(1);
  r.readings[0].id = "r";
  r.readings[0].green = "7";
  r.readings[0].day = samples::kToday;
  r.readings[0].kind = "soil_moisture";
  RC_ASSERT(validate(r, samples::kToday).empty());
  const double bad =
      *rc::gen::element(std::nan(""), -std::nan(""), kInfinity, -kInfinity, 1e300, -1e300);
  spoil(r, bad, *rc::gen::inRange(0, 15));
  RC_ASSERT(!validate(r, samples::kToday).empty());
}

RC_GTEST_PROP(RecordsLaws, TheOrderOfVisitsChangesNoCount, ()) {
  auto r = samples::records();
  r.visits.clear();
  const int n = *rc::gen::inRange(0, 8);
  for (int i = 0; i < n; ++i) {
    auto v = samples::visit();
    v.id = std::to_string(i);
    v.from = samples::at(7, *rc::gen::inRange(0, 30));
    v.to = samples::at(7, v.from->of_day - 420 + *rc::gen::inRange(0, 20));
    r.visits.push_back(v);
  }
  const auto before = validate(r, samples::kToday);
  std::reverse(r.visits.begin(), r.visits.end());
  RC_ASSERT(validate(r, samples::kToday).size() == before.size());
}

} // namespace
