#pragma once

#include "baize/api/clubs_cache.h"
#include "baize/season/fit.h"

#include <list>
#include <memory>
#include <mutex>

namespace baize::api {

/// Keeps the season models last asked for: a fit takes most of a second and holds
/// as long as the club's records stand and the day is the same. Safe from many
/// threads; fits stand in a queue, so that a crowd asking for one fits it once.
class ModelsCache {
 public:
  std::shared_ptr<const season::SeasonFit> fit(const std::shared_ptr<const Snapshot>& club,
                                               units::Day today);

 private:
  struct Entry {
    std::shared_ptr<const Snapshot> club;
    units::Day today;
    std::shared_ptr<const season::SeasonFit> fit;
  };
  std::mutex mutex_;
  std::list<Entry> entries_; ///< last asked for first
};

} // namespace baize::api
