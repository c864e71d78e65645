// What the season model answers: fitted once for each state of a club.
#include "baize/answers/season_checks.h"
#include "baize/answers/season_model.h"
#include "baize/api/models_cache.h"
#include "query.h"
#include "reply.h"

#include <algorithm>

namespace baize::api {
namespace {

constexpr std::size_t kKept = 4;

stats::Watch until(std::stop_token stop) {
  return [stop = std::move(stop)](double) { return !stop.stop_requested(); };
}

} // namespace

ModelsCache::Entry* ModelsCache::entry_of(const std::shared_ptr<const Snapshot>& club,
                                          units::Day today, const stats::Watch& watch) {
  const auto found = std::find_if(entries_.begin(), entries_.end(), [&](const Entry& entry) {
    return entry.club == club && entry.today == today;
  });
  if (found != entries_.end()) {
    entries_.splice(entries_.begin(), entries_, found);
    return &entries_.front();
  }
  auto made = std::make_shared<const season::SeasonFit>(
      services::season_fit(club->records, club->weather, today, watch));
  if (made->summary.termination == stats::Termination::stopped) {
    return nullptr;
  }
  entries_.push_front({club, today, made, {}});
  if (entries_.size() > kKept) {
    entries_.pop_back();
  }
  return &entries_.front();
}

std::shared_ptr<const season::SeasonFit>
ModelsCache::fit(const std::shared_ptr<const Snapshot>& club, units::Day today,
                 std::stop_token stop) {
  const std::lock_guard lock(mutex_);
  const Entry* entry = entry_of(club, today, until(std::move(stop)));
  return entry == nullptr ? nullptr : entry->fit;
}

units::Result<services::SeasonChecks>
ModelsCache::checks(const std::shared_ptr<const Snapshot>& club, units::Day today,
                    std::stop_token stop) {
  const std::lock_guard lock(mutex_);
  const stats::Watch watch = until(std::move(stop));
  Entry* entry = entry_of(club, today, watch);
  if (entry == nullptr) {
    return units::Refusal(stats::stopped().problem);
  }
  if (!entry->checks) {
    auto made = services::season_checks(*entry->fit, club->records, club->weather, watch);
    if (!made) {
      return made;
    }
    entry->checks = std::move(*made);
  }
  return *entry->checks;
}

Answer season_model(const Call& call) {
  const auto year = year_of(call, 2);
  if (!year) {
    return tl::unexpected(year.error());
  }
  const auto club = club_of(call);
  if (!club) {
    return units::Refusal(club.error());
  }
  const auto fit = call.context.models->fit(*club, call.today, call.request.stop);
  if (!fit) {
    return units::Refusal(stats::stopped().problem);
  }
  return services::season_model(*fit, (*club)->records, call.ids[1], *year)
      .map(
          [&](const services::SeasonModel& model) { return reply(answers::to_json(model, *fit)); });
}

Answer season_checks(const Call& call) {
  const auto club = club_of(call);
  if (!club) {
    return units::Refusal(club.error());
  }
  return call.context.models->checks(*club, call.today, call.request.stop)
      .map([](const services::SeasonChecks& checks) { return reply(answers::to_json(checks)); });
}

} // namespace baize::api
