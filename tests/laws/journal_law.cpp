// Nothing lost, nothing doubled, and the same on every phone and on the server,
// whatever the network does.
#include "laws/journal_model.h"
#include "unit/journal_samples.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace {

using namespace journal_model;
using journal_test::flag;
using journal_test::nothing;
using journal_test::number;

const std::vector<std::string> kThings{journal_test::id(900001), journal_test::id(900002),
                                       journal_test::id(900003)};
const std::vector<std::string> kFields{"score", "distance", "order"};

Value::Members drawn_set(Chance& chance) {
  if (chance.one_in(8)) {
    return {{"removed", flag(chance.one_in(2))}};
  }
  Value::Members set;
  const int fields = 1 + chance.below(2);
  for (int i = 0; i < fields; ++i) {
    const std::string& field = kFields[static_cast<std::size_t>(chance.below(3))];
    set.push_back({field, chance.one_in(6) ? nothing() : number(chance.below(4))});
  }
  return set;
}

/// What a phone has just written is what it shows, and it sees no conflict there.
void shows(const Phone& phone, const Entry& entry) {
  const Folded folded = fold(phone.of(entry.thing));
  const Thing* thing = folded.find(entry.kind, entry.thing);
  RC_ASSERT(thing != nullptr);
  RC_ASSERT(thing->heads == std::vector{entry.id});
  for (const Member& member : entry.set) {
    const auto field = std::find_if(thing->fields.begin(), thing->fields.end(),
                                    [&](const Field& one) { return one.name == member.name; });
    RC_ASSERT(field != thing->fields.end());
    RC_ASSERT(field->value() == member.value);
    RC_ASSERT(!field->conflict());
  }
}

struct Played {
  std::map<std::string, Entry> written;
  Server server;
  Phone one{1, 0};
  Phone other{2, 0};
};

/// Two phones at the same rolls: they write, correct, take back, remove; now and
/// then one meets the server. At the end both come home.
Played play(std::uint64_t seed) {
  Chance chance(seed);
  Played played;
  played.other = Phone(2, chance.below(40) - 20); // a clock ahead or behind
  constexpr int kSteps = 24;
  for (int step = 0; step < kSteps; ++step) {
    Phone& phone = chance.one_in(2) ? played.one : played.other;
    if (chance.one_in(3)) {
      phone.meet(played.server, chance, false);
      continue;
    }
    const auto& thing = kThings[static_cast<std::size_t>(chance.below(3))];
    const Entry& entry = phone.write(thing, drawn_set(chance));
    RC_ASSERT(played.written.emplace(entry.id, entry).second);
    shows(phone, entry);
  }
  for (int i = 0; i < 2; ++i) {
    played.one.meet(played.server, chance, true);
    played.other.meet(played.server, chance, true);
  }
  return played;
}

void agrees_with_the_rule(const Folded& folded, const std::vector<Entry>& entries) {
  const auto rule = standing_by_the_rule(entries);
  RC_ASSERT(folded.things.size() == rule.size());
  for (const Thing& thing : folded.things) {
    const auto& fields = rule.at(thing.id);
    RC_ASSERT(thing.fields.size() == fields.size());
    for (const Field& field : thing.fields) {
      std::set<std::string> ids;
      for (const Standing& one : field.standing) {
        ids.insert(one.entry);
      }
      RC_ASSERT(ids == fields.at(field.name));
      RC_ASSERT(field.standing.back().entry == *ids.rbegin());
    }
  }
}

// 100 draws of 100 plays: 10,000 interleavings.
RC_GTEST_PROP(JournalLaw, NothingIsLostOrDoubledAndAllAgree, ()) {
  const auto seed = *rc::gen::arbitrary<std::uint64_t>();
  for (std::uint64_t i = 0; i < 100; ++i) {
    const Played played = play(seed + i);
    RC_ASSERT(!played.one.waiting());
    RC_ASSERT(!played.other.waiting());
    RC_ASSERT(played.server.arrived.size() == played.written.size());
    for (const Entry& entry : played.server.arrived) {
      RC_ASSERT(played.written.at(entry.id) == entry);
    }
    const Folded at_home = fold(played.server.arrived);
    RC_ASSERT(fold(played.one.known()) == at_home);
    RC_ASSERT(fold(played.other.known()) == at_home);
    for (const Thing& thing : at_home.things) {
      RC_ASSERT(thing.missing.empty());
    }
    agrees_with_the_rule(at_home, played.server.arrived);
  }
}

RC_GTEST_PROP(JournalLaw, OrderAndDoublesSayNothing, ()) {
  const auto seed = *rc::gen::arbitrary<std::uint64_t>();
  Chance chance(seed);
  std::vector<Entry> entries = play(seed).server.arrived;
  const Folded before = fold(entries);
  std::vector<Entry> many = entries;
  many.insert(many.end(), entries.begin(), entries.end());
  chance.shuffle(many);
  RC_ASSERT(fold(many) == before);
}

RC_GTEST_PROP(JournalLaw, HowASetWasPartedSaysNothing, ()) {
  const auto seed = *rc::gen::arbitrary<std::uint64_t>();
  Chance chance(seed);
  const std::vector<Entry> entries = play(seed).server.arrived;
  std::vector<Entry> first;
  std::vector<Entry> second;
  for (const Entry& entry : entries) {
    const int to = chance.below(3); // some go to both
    if (to != 1) {
      first.push_back(entry);
    }
    if (to != 0) {
      second.push_back(entry);
    }
  }
  std::vector<Entry> merged = second;
  merged.insert(merged.end(), first.begin(), first.end());
  RC_ASSERT(fold(merged) == fold(entries));
  // Any part of the set follows the same rule, gaps and all.
  agrees_with_the_rule(fold(first), first);
}

RC_GTEST_PROP(JournalLaw, EachConflictIsSolvedByAnEntryOverAllOfIt, ()) {
  Played played = play(*rc::gen::arbitrary<std::uint64_t>());
  for (const Conflict& conflict : conflicts(fold(played.one.known()))) {
    played.one.write(conflict.thing, {{conflict.field, conflict.values.front().value}});
  }
  RC_ASSERT(conflicts(fold(played.one.known())).empty());
}

RC_GTEST_PROP(JournalLaw, AnotherThingChangesNothing, ()) {
  Played played = play(*rc::gen::arbitrary<std::uint64_t>());
  const Folded before = fold(played.one.known());
  played.one.write(journal_test::id(900009), {{"score", number(5)}});
  Folded after = fold(played.one.known());
  after.things.pop_back();
  RC_ASSERT(after == before);
}

} // namespace
