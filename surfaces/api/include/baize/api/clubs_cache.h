#pragma once

#include "baize/services/store_port.h"

#include <cstdint>
#include <list>
#include <memory>
#include <mutex>
#include <string>

namespace baize::api {

/// One club as it stood at a change number; never altered, so any number of
/// requests may read it while a newer one is loaded.
struct Snapshot {
  std::int64_t change = 0;
  green::Records records;
  climate::Weather weather;
};

/// Keeps the clubs last asked for in memory and loads one again only after the
/// store's change number has grown. Safe from many threads; loads stand in a
/// queue, so that a crowd asking for a changed club loads it once.
class ClubsCache {
 public:
  /// `most`: clubs kept, 1 or more; the one longest not asked for goes first.
  explicit ClubsCache(services::Store& store, std::size_t most = 8);

  /// The club at `change` (read from the store beforehand) or newer. Refuses as
  /// Store::load and Store::weather do.
  units::Result<std::shared_ptr<const Snapshot>> club(const std::string& id, std::int64_t change);
  std::size_t kept() const;

 private:
  struct Entry {
    std::string id;
    std::shared_ptr<const Snapshot> snapshot;
  };
  std::shared_ptr<const Snapshot> find(const std::string& id, std::int64_t change);
  void remember(const std::string& id, std::shared_ptr<const Snapshot> snapshot);

  services::Store& store_;
  std::size_t most_;
  mutable std::mutex entries_mutex_;
  std::mutex loading_mutex_;
  std::list<Entry> entries_; ///< last asked for first
};

} // namespace baize::api
