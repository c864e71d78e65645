#include "baize/services/season_review.h"

#include "season_of.h"
#include "slices.h"

namespace baize::services {

units::Result<SeasonReview> season_review(const green::Records& records,
                                          const climate::Weather& weather, const std::string& green,
                                          int year, units::Day today) {
  const green::Green* found = green::find_green(records, green);
  if (found == nullptr) {
    return units::refuse("no_such_green", "green", green, "a green of this club");
  }
  const auto period = period_of(year, today);
  if (!period) {
    return units::Refusal(period.error());
  }
  return season_of(slice(records, *found, today), weather, *period, today);
}

} // namespace baize::services
