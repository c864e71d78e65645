#include "baize/season/model.h"
#include "baize/units/number.h"

#include <cmath>

namespace baize::season {
namespace {

bool sound(const Prior& prior) {
  return std::isfinite(prior.mean) && std::isfinite(prior.sd) && prior.sd > 0;
}

bool sound(const Priors& priors) {
  return sound(priors.observer) && sound(priors.play) && sound(priors.depth) &&
         sound(priors.log_rate) && sound(priors.log_level_walk) && sound(priors.log_visit_sd) &&
         sound(priors.log_line_sd) && sound(priors.log_depth_spread) &&
         std::isfinite(priors.log_rate_calendar) && priors.log_rate_between > 0 &&
         std::isfinite(priors.log_rate_between) && priors.log_rate_within > 0 &&
         std::isfinite(priors.log_rate_within);
}

units::Problem outside(std::string field, double value, std::string rule) {
  return {"option_out_of_range", std::move(field), units::write_number(value), std::move(rule), {}};
}

} // namespace

std::optional<units::Problem> Options::problem() const {
  if (play_from_minute < 0 || play_from_minute > 1439) {
    return outside("play_from_minute", play_from_minute, "a minute of the day, 0 to 1439");
  }
  if (!(play_hours > 0 && play_hours <= 24)) {
    return outside("play_hours", play_hours, "a number above 0 and up to 24 hours");
  }
  if (!(tolerance > 0 && tolerance <= 2)) {
    return outside("tolerance", tolerance, "a number above 0 and up to 2 points");
  }
  if (draws < 50 || draws > 20000) {
    return outside("draws", draws, "a whole number from 50 to 20000");
  }
  if (!sound(priors)) {
    return units::Problem{"option_out_of_range", "priors", "", "finite means and sd above 0", {}};
  }
  return std::nullopt;
}

} // namespace baize::season
