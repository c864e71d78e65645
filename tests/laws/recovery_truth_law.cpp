// Noise-free truth: after the work the level is level - depth x exp(-rate x days), as in a
// recovery without setbacks. A visit writes down the total of 99 balls, which is 99 times the
// truth rounded to a whole number: still rising, so the day of recovery of the written record is
// known exactly, and every thinned record must have it inside its interval.
#include "laws/recovery_given.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace baize::laws {
namespace {

using recovery::Censoring;
using recovery::WorkLoss;

constexpr int kBalls = 99;
constexpr int kBefore = 20; // days of record before the work

struct Truth {
  double level = 9;
  double depth = 3;
  double rate = 0.1;

  int total(int days_after) const {
    const double loss = days_after < 0 ? 0 : depth * std::exp(-rate * days_after);
    return static_cast<int>(std::lround(kBalls * (level - loss)));
  }
};

rc::Gen<Truth> any_truth() {
  return rc::gen::exec([] {
    return Truth{*rc::gen::inRange(80, 96) / 10.0, *rc::gen::inRange(5, 60) / 10.0,
                 *rc::gen::inRange(3, 40) / 100.0};
  });
}

/// A record that visits the given days, counted from the work.
green::Records record(const Truth& truth, const std::vector<int>& days) {
  green::Records records;
  green::Green green;
  green.id = "7";
  records.greens.push_back(green);
  for (const int n : days) {
    green::Visit visit;
    visit.id = "v" + std::to_string(n);
    visit.green = "7";
    visit.day = kFirst + (kBefore + n);
    green::Run run;
    run.total = truth.total(n);
    run.total_of = kBalls;
    visit.runs.push_back(run);
    records.visits.push_back(visit);
  }
  green::Work work;
  work.id = "w1";
  work.kind = "coring";
  work.day = kFirst + kBefore;
  records.works.push_back(work);
  return records;
}

std::vector<int> all_days() {
  std::vector<int> days;
  for (int n = -kBefore; n < kDays - kBefore; ++n) {
    if (n != 0) {
      days.push_back(n);
    }
  }
  return days;
}

/// Each day kept or not; the day before the work always, or there were no own level.
std::vector<int> thinned(const std::vector<int>& days, int keep_one_in) {
  std::vector<int> kept;
  for (const int n : days) {
    if (n == -1 || *rc::gen::inRange(0, keep_one_in) == 0) {
      kept.push_back(n);
    }
  }
  return kept;
}

WorkLoss loss_of(const Truth& truth, const std::vector<int>& days) {
  return losses_of(record(truth, days)).at(0);
}

RC_GTEST_PROP(RecoveryTruth, ThinningNeverExcludesTheTrueDay, ()) {
  const Truth truth = *any_truth();
  const WorkLoss loss = loss_of(truth, thinned(all_days(), *rc::gen::inRange(2, 30)));
  for (const auto& interval : loss.recovery) {
    const bool own = interval.definition == recovery::Definition::own_level;
    const int wanted = own ? truth.total(-1) : 8 * kBalls;
    int day = 1; // the first day of the written truth that is back
    while (day < kDays && truth.total(day) < wanted) {
      ++day;
    }
    RC_ASSERT(interval.after_days < day);
    RC_ASSERT(!interval.by_days || day <= *interval.by_days);
  }
}

RC_GTEST_PROP(RecoveryTruth, EveryDayVisitedGivesTheDayItself, ()) {
  const Truth truth = *any_truth();
  const WorkLoss loss = loss_of(truth, all_days());
  for (const auto& interval : loss.recovery) {
    if (interval.by_days) {
      RC_ASSERT(*interval.by_days - interval.after_days == 1);
    }
  }
  RC_ASSERT(loss.before == truth.total(-1) / static_cast<double>(kBalls));
}

RC_GTEST_PROP(RecoveryTruth, ThinningOnlyWidens, ()) {
  const Truth truth = *any_truth();
  const auto many = thinned(all_days(), *rc::gen::inRange(1, 6));
  const WorkLoss fine = loss_of(truth, many);
  const WorkLoss coarse = loss_of(truth, thinned(many, *rc::gen::inRange(2, 6)));
  for (std::size_t i = 0; i < fine.recovery.size(); ++i) {
    RC_ASSERT(coarse.recovery[i].after_days <= fine.recovery[i].after_days);
    if (coarse.recovery[i].by_days) {
      RC_ASSERT(fine.recovery[i].by_days.has_value());
      RC_ASSERT(*coarse.recovery[i].by_days >= *fine.recovery[i].by_days);
    }
  }
}

RC_GTEST_PROP(RecoveryTruth, BoundsHoldTheAreaOfEveryDayVisited, ()) {
  const Truth truth = *any_truth();
  const WorkLoss full = loss_of(truth, all_days());
  const WorkLoss thin = loss_of(truth, thinned(all_days(), *rc::gen::inRange(2, 20)));
  if (thin.area && thin.area->ended) {
    RC_ASSERT(thin.area->low <= full.area->score_days + 1e-9);
    RC_ASSERT(thin.area->high >= full.area->score_days - 1e-9);
  }
}

// The integral of depth x exp(-rate x t) from 0 on is depth / rate: exact calculus. What visits
// on every day may miss of it: the first day, held at its end's loss; half a point in the total of
// each day; the tail below half a point; the trapezoids' own error, h^2/12 x (f'(b) - f'(a)).
RC_GTEST_PROP(RecoveryTruth, AreaComesNearTheIntegral, ()) {
  const Truth truth{9, 4, *rc::gen::inRange(10, 30) / 100.0};
  const WorkLoss loss = loss_of(truth, all_days());
  const double half_point = 0.5 / kBalls;
  const double missed = truth.depth * truth.rate / 2 + half_point * *loss.recovery.at(3).by_days +
                        half_point / truth.rate + truth.depth * truth.rate / 12;
  RC_ASSERT(std::abs(loss.area->score_days - truth.depth / truth.rate) < missed);
}

} // namespace
} // namespace baize::laws
