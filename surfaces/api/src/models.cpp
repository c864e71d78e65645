// What the season model answers: fitted once for each state of a club.
#include "baize/answers/season_model.h"
#include "baize/api/models_cache.h"
#include "baize/units/number.h"
#include "call.h"
#include "reply.h"

#include <algorithm>

namespace baize::api {
namespace {
constexpr std::size_t kKept = 4;
}

std::shared_ptr<const season::SeasonFit>
ModelsCache::fit(const std::shared_ptr<const Snapshot>& club, units::Day today) {
  const std::lock_guard lock(mutex_);
  const auto found = std::find_if(entries_.begin(), entries_.end(), [&](const Entry& entry) {
    return entry.club == club && entry.today == today;
  });
  if (found != entries_.end()) {
    entries_.splice(entries_.begin(), entries_, found);
    return entries_.front().fit;
  }
  auto made = std::make_shared<const season::SeasonFit>(
      services::season_fit(club->records, club->weather, today));
  entries_.push_front({club, today, made});
  if (entries_.size() > kKept) {
    entries_.pop_back();
  }
  return made;
}

Answer season_model(const Call& call) {
  const auto year = units::parse_whole(call.ids[2]);
  if (!year) {
    return units::refuse("bad_target", "year", call.ids[2], "a calendar year");
  }
  const auto club = call.context.clubs.club(call.ids.front(), call.change);
  if (!club) {
    return units::Refusal(club.error());
  }
  const auto fit = call.context.models->fit(*club, call.today);
  return services::season_model(*fit, (*club)->records, call.ids[1], *year)
      .map(
          [&](const services::SeasonModel& model) { return reply(answers::to_json(model, *fit)); });
}

} // namespace baize::api
