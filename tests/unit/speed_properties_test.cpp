#include "baize/speed/place.h"
#include "unit/speed_runs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace {

using namespace baize;
using namespace baize::speed;

green::Run any_run(green::Direction direction) {
  auto run = samples::run(direction, {});
  const int rolls = *rc::gen::inRange(1, 6);
  const int centre = *rc::gen::inRange(100, 900);
  for (int i = 0; i < rolls; ++i) {
    green::Roll roll;
    roll.order = i + 1;
    roll.distance = units::from_centimetres(centre + *rc::gen::inRange(-20, 21));
    run.rolls.push_back(roll);
  }
  return run;
}

std::vector<green::Run> any_spot() {
  return {any_run(green::Direction::out), any_run(green::Direction::back)};
}

RC_GTEST_PROP(SpeedLaws, SwappingOutAndBackChangesOnlyTheirPlaces, ()) {
  const auto runs = any_spot();
  auto swapped = runs;
  std::swap(swapped[0].direction, swapped[1].direction);
  const auto a = spot_speed(runs);
  const auto b = spot_speed(swapped);
  // To the last digit.
  RC_ASSERT(a->speed_m == b->speed_m);
  RC_ASSERT(a->plain_mean_m == b->plain_mean_m);
  RC_ASSERT(a->slope_corrected_m == b->slope_corrected_m);
  RC_ASSERT(a->standard_error_m == b->standard_error_m);
  RC_ASSERT(a->ratio == b->ratio);
  RC_ASSERT(a->slope_class == b->slope_class);
  RC_ASSERT(a->warnings == b->warnings);
  RC_ASSERT(a->out->mean_m == b->back->mean_m);
}

RC_GTEST_PROP(SpeedLaws, TheOrderOfRunsAndRollsChangesNothing, ()) {
  auto runs = any_spot();
  const auto a = spot_speed(runs);
  std::reverse(runs.begin(), runs.end());
  for (auto& run : runs) {
    std::reverse(run.rolls.begin(), run.rolls.end());
  }
  const auto b = spot_speed(runs);
  RC_ASSERT(a->speed_m == b->speed_m);
  RC_ASSERT(a->standard_error_m == b->standard_error_m);
}

RC_GTEST_PROP(SpeedLaws, TheSlopeFormulaIsNeverAboveThePlainMean, ()) {
  const auto spot = spot_speed(any_spot());
  RC_ASSERT(*spot->slope_corrected_m <= spot->plain_mean_m * (1 + 1e-15));
  const double shorter = std::min(spot->out->mean_m, spot->back->mean_m);
  RC_ASSERT(*spot->slope_corrected_m >= shorter * (1 - 1e-15));
  RC_ASSERT(*spot->ratio >= 1);
}

RC_GTEST_PROP(SpeedLaws, EverythingScalesWithTheUnit, ()) {
  auto runs = any_spot();
  const Options options;
  const auto a = spot_speed(runs, options);
  constexpr double k = 2; // exact in binary
  for (auto& run : runs) {
    for (auto& roll : run.rolls) {
      roll.distance->metres *= k;
    }
  }
  const Options scaled{options.run_spread_m * k, options.direction_gap_m * k, options.roll_sd_m * k,
                       options.line_drift_m * k};
  const auto b = spot_speed(runs, scaled);
  RC_ASSERT(std::fabs(b->speed_m - k * a->speed_m) < 1e-12);
  RC_ASSERT(std::fabs(b->standard_error_m - k * a->standard_error_m) < 1e-12);
}

RC_GTEST_PROP(SpeedLaws, AChangeTurnedRoundIsTheSameChange, ()) {
  const auto a = visit_speed(any_spot());
  const auto b = visit_speed(any_spot());
  const auto forth = change(*a, *b);
  const auto back = change(*b, *a);
  RC_ASSERT(forth.real == back.real);
  RC_ASSERT(forth.low_m == -back.high_m);
  RC_ASSERT(!change(*a, *a).real);
}

RC_GTEST_PROP(PlaceLaws, LaterMarksLieFurtherAndWithinTheRoll, ()) {
  const double distance = *rc::gen::inRange(50, 1500) / 100.0;
  const double end = *roll_time(distance);
  const double early = end * *rc::gen::inRange(0, 1000) / 1000.0;
  const double late = early + (end - early) * *rc::gen::inRange(0, 1000) / 1000.0;
  const auto a = place_of_mark(early, distance);
  const auto b = place_of_mark(late, distance);
  RC_ASSERT(a->metres <= b->metres + 1e-12);
  RC_ASSERT(a->metres >= 0 && b->metres <= distance * (1 + 1e-12));
  RC_ASSERT(b->standard_error_m >= -1e-12);
}

RC_GTEST_PROP(RollingLaws, TheHarmonicMeanIsTheLevelRoll, ()) {
  const double up = *rc::gen::inRange(100, 500) / 100.0;
  const double down = up + *rc::gen::inRange(0, 500) / 100.0;
  const auto found = slope(up, down);
  const double level = kReleaseSpeed * kReleaseSpeed / (2 * found->level_deceleration_m_s2);
  RC_ASSERT(std::fabs(level - 2 * up * down / (up + down)) < 1e-12);
}

} // namespace
