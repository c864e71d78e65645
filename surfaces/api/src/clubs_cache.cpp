#include "baize/api/clubs_cache.h"

#include <algorithm>

namespace baize::api {

ClubsCache::ClubsCache(services::Store& store, std::size_t most)
    : store_(store), most_(std::max<std::size_t>(most, 1)) {}

std::shared_ptr<const Snapshot> ClubsCache::find(const std::string& id, std::int64_t change) {
  const std::lock_guard lock(entries_mutex_);
  const auto found = std::find_if(entries_.begin(), entries_.end(),
                                  [&](const Entry& entry) { return entry.id == id; });
  if (found == entries_.end() || found->snapshot->change < change) {
    return nullptr;
  }
  entries_.splice(entries_.begin(), entries_, found);
  return found->snapshot;
}

void ClubsCache::remember(const std::string& id, std::shared_ptr<const Snapshot> snapshot) {
  const std::lock_guard lock(entries_mutex_);
  entries_.remove_if([&](const Entry& entry) { return entry.id == id; });
  entries_.push_front({id, std::move(snapshot)});
  if (entries_.size() > most_) {
    entries_.pop_back();
  }
}

units::Result<std::shared_ptr<const Snapshot>> ClubsCache::club(const std::string& id,
                                                                std::int64_t change) {
  if (auto found = find(id, change)) {
    return found;
  }
  const std::lock_guard loading(loading_mutex_);
  if (auto found = find(id, change)) { // loaded while this one stood in the queue
    return found;
  }
  // The number is read before the records: a write in between makes the snapshot
  // newer than its number, which costs one needless load and never a stale answer.
  const auto now = store_.change_number();
  if (!now) {
    return tl::unexpected(now.error());
  }
  auto records = store_.load(id);
  if (!records) {
    return tl::unexpected(records.error());
  }
  auto weather = store_.weather(id);
  if (!weather) {
    return tl::unexpected(weather.error());
  }
  auto snapshot =
      std::make_shared<Snapshot>(Snapshot{*now, std::move(*records), std::move(*weather)});
  remember(id, snapshot);
  return snapshot;
}

std::size_t ClubsCache::kept() const {
  const std::lock_guard lock(entries_mutex_);
  return entries_.size();
}

} // namespace baize::api
