#pragma once

#include "baize/api/clubs_cache.h"
#include "baize/season/fit.h"
#include "baize/services/season_checks.h"

#include <list>
#include <memory>
#include <mutex>
#include <optional>
#include <stop_token>

namespace baize::api {

/// Keeps the season models last asked for: a fit takes most of a second and holds
/// as long as the club's records stand and the day is the same. Safe from many
/// threads; fits stand in a queue, so that a crowd asking for one fits it once.
/// A fit that `stop` ended is not kept.
class ModelsCache {
 public:
  std::shared_ptr<const season::SeasonFit> fit(const std::shared_ptr<const Snapshot>& club,
                                               units::Day today, std::stop_token stop = {});
  /// The checks of that fit: three further fits, kept with it.
  units::Result<services::SeasonChecks> checks(const std::shared_ptr<const Snapshot>& club,
                                               units::Day today, std::stop_token stop = {});

 private:
  struct Entry {
    std::shared_ptr<const Snapshot> club;
    units::Day today;
    std::shared_ptr<const season::SeasonFit> fit;
    std::optional<services::SeasonChecks> checks;
  };
  /// The lock is held by whoever calls. Null where it was stopped.
  Entry* entry_of(const std::shared_ptr<const Snapshot>& club, units::Day today,
                  const stats::Watch& watch);
  std::mutex mutex_;
  std::list<Entry> entries_; ///< last asked for first
};

} // namespace baize::api
