// What must hold of any shared rolls: order, sides, a constant lean, other visits.
#include "baize/observers/lean.h"
#include "baize/observers/pair.h"
#include "unit/observers_samples.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace {

using namespace observers_test;
using observers::pair_agreement;
using observers::shared_table;

/// Three to eight sessions of two to six balls by Ann and Bob, scored 2 to 9.
green::Records drawn() {
  std::vector<green::Visit> visits;
  const int sessions = *rc::gen::inRange(3, 9);
  for (int s = 0; s < sessions; ++s) {
    const auto balls = static_cast<std::size_t>(*rc::gen::inRange(2, 7));
    const units::Day on = day("2025-01-01") + 20 * s;
    const auto scores = rc::gen::container<std::vector<int>>(balls, rc::gen::inRange(2, 10));
    visits.push_back(visit("ann", on, "s", *scores));
    visits.push_back(visit("bob", on, "s", *scores));
  }
  return club(std::move(visits));
}

void near(double a, double b) {
  constexpr double kRounding = 1e-9;
  RC_ASSERT(std::abs(a - b) < kRounding);
}

RC_GTEST_PROP(ObserversLaw, OrderOfVisitsSaysNothing, ()) {
  auto records = drawn();
  const auto before = pair_agreement(shared_table(records, kToday), "ann", "bob");
  std::reverse(records.visits.begin(), records.visits.end());
  const auto after = pair_agreement(shared_table(records, kToday), "ann", "bob");
  RC_ASSERT(before.bias.value == after.bias.value);
  RC_ASSERT(before.upper_limit.se == after.upper_limit.se);
}

RC_GTEST_PROP(ObserversLaw, TheOtherSideSeesItTurned, ()) {
  const auto table = shared_table(drawn(), kToday);
  const auto one = pair_agreement(table, "ann", "bob");
  const auto other = pair_agreement(table, "bob", "ann");
  near(one.bias.value, -other.bias.value);
  near(one.upper_limit.value, -other.lower_limit.value);
  near(*one.bias.se, *other.bias.se);
  near(one.sd, other.sd);
  RC_ASSERT(one.icc.has_value() == other.icc.has_value());
  if (one.icc) {
    near(one.icc->value, other.icc->value);
  }
  near(lean_of(table, "ann").bias.value, -lean_of(table, "bob").bias.value);
}

RC_GTEST_PROP(ObserversLaw, APointMoreMovesTheBiasAndNothingElse, ()) {
  auto records = drawn();
  const auto before = pair_agreement(shared_table(records, kToday), "ann", "bob");
  for (auto& one : records.visits) {
    for (auto& roll : one.runs[0].rolls) {
      roll.score = *roll.score + (one.observer == "ann" ? 1 : 0);
    }
  }
  const auto after = pair_agreement(shared_table(records, kToday), "ann", "bob");
  near(after.bias.value, before.bias.value + 1);
  near(*after.bias.se, *before.bias.se);
  near(after.sd, before.sd);
}

RC_GTEST_PROP(ObserversLaw, VisitsThatShareNothingChangeNothing, ()) {
  auto records = drawn();
  const auto before = pair_agreement(shared_table(records, kToday), "ann", "bob");
  records.visits.push_back(visit("ann", day("2025-03-03"), "", {5, 6}));
  records.visits.push_back(visit("cy", day("2025-03-03"), "alone", {5, 6}));
  const auto after = pair_agreement(shared_table(records, kToday), "ann", "bob");
  RC_ASSERT(after.bias.value == before.bias.value);
  RC_ASSERT(after.bias.se == before.bias.se);
}

} // namespace
