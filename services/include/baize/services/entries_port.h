#pragma once

#include "baize/green/club.h"
#include "baize/journal/entry.h"
#include "baize/services/store_port.h"

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace baize::services {

/// What stands around new entries, seen from inside the write that keeps them.
class Around {
 public:
  Around() = default;
  Around(const Around&) = delete;
  Around& operator=(const Around&) = delete;
  virtual ~Around() = default;

  /// Every entry, the new ones too, of the things that the new entries speak of,
  /// of the visits these belong or ever belonged to, and of all that belongs to
  /// those visits.
  virtual const std::vector<journal::Entry>& entries() const = 0;
  /// The club with its greens and observers, and nothing else.
  virtual const green::Records& ground() const = 0;
  /// Visits kept as records on that day, or that share these rolls (empty: none).
  virtual std::vector<green::Visit> visits_beside(units::Day day,
                                                  const std::string& shared_rolls) const = 0;
};

/// What the entries come to: records to keep, and ids of those to take out.
/// A record taken out keeps its revisions; kept again, it is there again.
struct Decision {
  green::Records records;
  std::vector<std::string> visits_out;
  std::vector<std::string> readings_out;
  std::vector<std::string> works_out;
};
using Decide = std::function<Decision(const Around&)>;

/// Entries of one thing; nobody corrects a roll so often.
inline constexpr int kMostOfThing = 1000;

struct KeptEntries {
  std::vector<std::string> kept;      ///< on disk now, also those that were there before
  std::vector<std::string> crowded;   ///< not kept: their thing has kMostOfThing already
  std::vector<std::string> differing; ///< ids that are there with other contents
  Receipt receipt;                    ///< of the records
};

struct EntriesPage {
  std::vector<journal::Entry> entries; ///< in the order in which they arrived
  std::int64_t next = 0;               ///< to ask for what comes after them
};

/// Keeps entries: only ever added, each with the number of its arrival.
class EntryStore {
 public:
  EntryStore() = default;
  EntryStore(const EntryStore&) = delete;
  EntryStore& operator=(const EntryStore&) = delete;
  virtual ~EntryStore() = default;

  /// Entries and what they come to, in one transaction: all of it on disk when
  /// this returns, or none. `decide` is called inside, so that no other write comes
  /// between what it sees and what it decides; it must not call the store. It may
  /// be called again, from the start, when the disk took the write back: the last
  /// call holds. Entries must be canonical and pass journal::check. Refuses
  /// "no_such_club".
  virtual units::Result<KeptEntries> keep_entries(const std::string& club,
                                                  const std::vector<journal::Entry>& entries,
                                                  const Author& author, const Decide& decide) = 0;
  /// Up to `limit` entries that arrived after number `since`.
  virtual units::Result<EntriesPage> entries_since(const std::string& club, std::int64_t since,
                                                   int limit) = 0;
  /// Every entry of each thing whose entries are not one plain chain, one over
  /// the other: only there can values conflict.
  virtual units::Result<std::vector<journal::Entry>> branched(const std::string& club) = 0;
};

} // namespace baize::services
