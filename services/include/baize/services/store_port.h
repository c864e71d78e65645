#pragma once

#include "baize/climate/weather.h"
#include "baize/green/club.h"
#include "baize/units/problem.h"

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace baize::services {

/// A file as it was received, kept so that it can be handed back byte for byte.
struct ReceivedFile {
  std::string name;    ///< rolls.csv, works.csv ...
  std::string content; ///< every byte
  friend bool operator==(const ReceivedFile&, const ReceivedFile&) = default;
};

/// Who wrote, and when (RFC 3339, UTC). Both are arguments: the store has no clock.
struct Author {
  std::string name;
  std::string at;
};

/// What a write did, counted by record.
struct Receipt {
  int added = 0;
  int corrected = 0; ///< same id, other contents: a new revision beside the old one
  int unchanged = 0;
};

struct ClubName {
  std::string id;
  std::string name;
};

/// One revision of a record, for showing its history.
struct Revision {
  int number = 1;
  std::string author;
  std::string at;
  std::string contents; ///< JSON
};

class EntryStore;
class PeopleStore;
class PhotoStore;

/// Keeps raw records. Every write is one transaction: all of it or none, and on
/// disk before the call returns. Implementations meet tests/contract.
class Store {
 public:
  Store() = default;
  Store(const Store&) = delete;
  Store& operator=(const Store&) = delete;
  virtual ~Store() = default;

  virtual units::Result<std::vector<ClubName>> clubs() = 0;
  /// Everything current of one club. Refuses "no_such_club".
  virtual units::Result<green::Records> load(const std::string& club) = 0;
  virtual units::Result<climate::Weather> weather(const std::string& club) = 0;
  /// Records not mentioned stay as they are. A record equal to its current
  /// revision adds nothing.
  virtual units::Result<Receipt> keep(const green::Records& records, const Author& author,
                                      const std::vector<ReceivedFile>& files) = 0;
  virtual units::Result<Receipt>
  keep_weather(const std::string& club, const climate::Weather& weather, const Author& author) = 0;
  /// The newest received copy of each file name.
  virtual units::Result<std::vector<ReceivedFile>> received(const std::string& club) = 0;
  /// Oldest first; kind is "visit", "work", "green" ...
  virtual units::Result<std::vector<Revision>>
  history(const std::string& club, const std::string& kind, const std::string& id) = 0;
  /// Grows with every write by anybody, so that a reader knows when to load again.
  virtual units::Result<std::int64_t> change_number() = 0;
  /// The part that keeps entries of phones; null where this store keeps none.
  virtual EntryStore* entries() { return nullptr; }
  /// The part that keeps who may do what; null where this store keeps none.
  virtual PeopleStore* people() { return nullptr; }
  /// The part that keeps pictures; null where this store keeps none.
  virtual PhotoStore* photos() { return nullptr; }
};

} // namespace baize::services
