// Laws that hold for any record, whatever was measured.
#include "laws/recovery_given.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace baize::laws {
namespace {

using recovery::Definition;
using recovery::Ledger;
using recovery::WorkLoss;

const units::Period kPeriod{kFirst - 3, kLast + 5};

Ledger ledger_of(const green::Records& records) {
  return recovery::true_days(records, "7", kPeriod, kLast);
}

template <class T> void shuffle(std::vector<T>& values) {
  std::vector<std::size_t> order(values.size());
  for (std::size_t i = 0; i < order.size(); ++i) {
    order[i] = i;
  }
  // Swaps by places drawn, since the records have no generator of their own.
  for (std::size_t i = values.size(); i > 1; --i) {
    std::swap(values[i - 1], values[*rc::gen::inRange<std::size_t>(0, i)]);
  }
}

RC_GTEST_PROP(RecoveryLaws, OrderOfRecordsChangesNoByte, ()) {
  const auto records = *any_records();
  const auto weather = *any_weather();
  auto mixed = records;
  shuffle(mixed.visits);
  shuffle(mixed.works);
  shuffle(mixed.standards);
  for (green::Visit& visit : mixed.visits) {
    shuffle(visit.runs);
    for (green::Run& run : visit.runs) {
      shuffle(run.rolls);
    }
  }
  RC_ASSERT(print(losses_of(mixed, weather)) == print(losses_of(records, weather)));
  RC_ASSERT(print(ledger_of(mixed)) == print(ledger_of(records)));
}

RC_GTEST_PROP(RecoveryLaws, OutAndBackMayChangePlaces, ()) {
  const auto records = *any_records();
  auto turned = records;
  for (green::Visit& visit : turned.visits) {
    for (green::Run& run : visit.runs) {
      run.direction =
          run.direction == green::Direction::out ? green::Direction::back : green::Direction::out;
    }
  }
  RC_ASSERT(print(losses_of(turned)) == print(losses_of(records)));
  RC_ASSERT(print(ledger_of(turned)) == print(ledger_of(records)));
}

RC_GTEST_PROP(RecoveryLaws, AnotherGreenIsAnotherMatter, ()) {
  const auto records = *any_records();
  auto more = records;
  more.visits.push_back(*any_visit("x", "8", kFirst + *rc::gen::inRange(0, kDays)));
  green::Work work;
  work.id = "x";
  work.kind = "coring";
  work.day = kFirst + *rc::gen::inRange(0, kDays);
  work.greens = {"8"};
  more.works.push_back(work);
  RC_ASSERT(print(losses_of(more)) == print(losses_of(records)));
  RC_ASSERT(print(ledger_of(more)) == print(ledger_of(records)));
}

RC_GTEST_PROP(RecoveryLaws, WhatIsNotYetKnownChangesNothing, ()) {
  const auto records = *any_records();
  const units::Day end = kFirst + *rc::gen::inRange(0, kDays);
  auto known = records;
  std::erase_if(known.visits, [&](const green::Visit& v) { return v.day > end; });
  std::erase_if(known.works, [&](const green::Work& w) { return w.day > end; });
  RC_ASSERT(print(recovery::work_losses(known, {}, "7", end, {})) ==
            print(recovery::work_losses(records, {}, "7", end, {})));
  RC_ASSERT(print(recovery::true_days(known, "7", kPeriod, end)) ==
            print(recovery::true_days(records, "7", kPeriod, end)));
}

RC_GTEST_PROP(RecoveryLaws, AVisitInsideAnIntervalNarrowsIt, ()) {
  const auto records = *any_records();
  const auto losses = losses_of(records);
  RC_PRE(!losses.empty());
  const std::size_t place = *rc::gen::inRange<std::size_t>(0, losses.size());
  const WorkLoss& loss = losses[place];
  for (const auto& interval : loss.recovery) {
    const units::Day end = interval.first_back ? *interval.first_back - 1 : loss.horizon;
    if (interval.last_below >= end) {
      continue;
    }
    const units::Day day =
        interval.last_below + *rc::gen::inRange(1, end - interval.last_below + 1);
    auto more = records;
    more.visits.push_back(*any_visit("x", "7", day));
    more.visits.back().half = loss.half;
    const auto again = losses_of(more);
    RC_ASSERT(again.size() == losses.size());
    const auto& narrow = again[place].recovery[static_cast<std::size_t>(interval.definition)];
    RC_ASSERT(narrow.after_days >= interval.after_days);
    if (interval.by_days) {
      RC_ASSERT(narrow.by_days.has_value());
      RC_ASSERT(*narrow.by_days <= *interval.by_days);
    }
    RC_ASSERT(again[place].visits_after == loss.visits_after + 1);
    // One end moves, but that two running may still wait for its second day.
    RC_ASSERT(interval.definition == Definition::two_running ||
              interval.censoring == recovery::Censoring::not_asked ||
              narrow.after_days > interval.after_days || narrow.by_days != interval.by_days);
  }
}

RC_GTEST_PROP(RecoveryLaws, BoundsHoldTheArea, ()) {
  for (const WorkLoss& loss : losses_of(*any_records(), *any_weather())) {
    RC_ASSERT(loss.area.has_value() == (loss.before && loss.visits_after > 0));
    if (loss.area) {
      RC_ASSERT(loss.area->low >= 0);
      RC_ASSERT(loss.area->low <= loss.area->score_days + 1e-9);
      RC_ASSERT(loss.area->score_days <= loss.area->high + 1e-9);
      // growth potential lies between 0 and 1
      RC_ASSERT(loss.area->growth_score_days.value_or(0) <= loss.area->score_days + 1e-9);
      RC_ASSERT(loss.area->growth_score_days.value_or(0) >= 0);
    }
  }
}

RC_GTEST_PROP(RecoveryLaws, LedgerCountsAddUp, ()) {
  const auto records = *any_records();
  const units::Day first = kFirst + *rc::gen::inRange(-10, kDays);
  const units::Day last = first + *rc::gen::inRange(0, kDays);
  const Ledger ledger = recovery::true_days(records, "7", {first, last}, kLast);
  const int days = std::max(0, std::min(last, kLast) - first + 1);
  RC_ASSERT(static_cast<int>(ledger.days.size()) == days);
  RC_ASSERT(ledger.period.days() == days);
  RC_ASSERT(ledger.open() + ledger.closed == days);
  RC_ASSERT(ledger.fewest_true() <= ledger.most_true());
  RC_ASSERT(ledger.most_true() + ledger.measured_not == ledger.open());
}

RC_GTEST_PROP(RecoveryLaws, LedgersOfPartsMakeTheWhole, ()) {
  const auto records = *any_records();
  const Ledger whole = ledger_of(records);
  const units::Day cut = kFirst + *rc::gen::inRange(0, kDays);
  const Ledger left = recovery::true_days(records, "7", {kPeriod.first, cut}, kLast);
  const Ledger right = recovery::true_days(records, "7", {cut + 1, kPeriod.last}, kLast);
  auto joined = left.days;
  joined.insert(joined.end(), right.days.begin(), right.days.end());
  RC_ASSERT(joined == whole.days);
}

} // namespace
} // namespace baize::laws
