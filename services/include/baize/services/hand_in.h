#pragma once

#include "baize/journal/fold.h"
#include "baize/services/entries_port.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::services {

/// What a phone hands in.
struct HandIn {
  std::string club;
  std::string phone;   ///< whose package it is; entries of other phones may be in it
  std::string sent_at; ///< by the phone's clock
  std::vector<journal::Entry> entries;
};

struct RefusedEntry {
  std::string id;
  units::Problem problem;
};

/// What has become of a thing: a record, none because of `problems`, or not
/// looked at yet because the visit is not closed.
enum class ThingState { accepted, refused, open };

struct ThingOutcome {
  journal::Kind kind = journal::Kind::visit;
  std::string thing;
  ThingState state = ThingState::open;
  bool removed = false;
  std::vector<units::Problem> problems;
  int conflicts = 0; ///< a visit's count those of its rolls and totals
};

struct HandInReceipt {
  std::vector<std::string> kept; ///< on disk now, also those that were there before
  std::vector<RefusedEntry> refused;
  std::vector<ThingOutcome> visits;    ///< that the entries speak of, or that rolls belong to
  std::vector<ThingOutcome> others;    ///< readings, works and photos
  std::vector<units::Problem> remarks; ///< pointed out, refuses nothing
  Receipt records;
};

/// Keeps what a phone wrote down, and makes records of it. Each entry is looked
/// at alone first: one that is refused stops no other. Then all that is known of
/// the things they speak of is folded (journal::fold), and what is whole becomes
/// records: a closed visit, a reading, a work. What is not stays as entries, with
/// the reasons; its record, where it had one, stays as it was; later entries mend
/// it. Handing in the same again changes nothing. A photo is accepted where it is
/// told whole and its visit or work is here; it keeps neither of them waiting. A
/// closed visit of photos alone, without a roll, is accepted and makes no record.
///
/// Refused alone: what journal::check refuses, "club_differs" (an entry that says
/// it is of another club), "entry_differs" (the id is kept with other contents),
/// "too_many_entries" (of one thing).
/// Remarked: "clock_differs", where the phone's clock is more than five minutes
/// from `author.at`, "no_such_visit" for a roll whose visit has not come.
/// Refuses "no_such_club".
///
/// `today` is the server's; a visit may lie a day after it, since the club's
/// calendar may be ahead of the server's.
units::Result<HandInReceipt> hand_in(EntryStore& store, const HandIn& given, const Author& author,
                                     units::Day today);

/// Every conflict of a club that a person has not solved. Refuses "no_such_club".
units::Result<std::vector<journal::Conflict>> open_conflicts(EntryStore& store,
                                                             const std::string& club);

} // namespace baize::services
