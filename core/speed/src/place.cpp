#include "baize/speed/place.h"

#include "baize/units/number.h"

#include <string>

namespace baize::speed {
namespace {

std::optional<units::Problem> outside(const char* field, double value, double lowest,
                                      double highest, const char* rule) {
  if (value >= lowest && value <= highest) {
    return std::nullopt;
  }
  return units::Problem{"option_out_of_range", field, units::write_number(value), rule, {}};
}

} // namespace

std::optional<units::Problem> PlaceOptions::problem() const {
  if (const auto bad =
          outside("release_speed_m_s", release_speed_m_s, 0.5, 5, "a number from 0.5 to 5 m/s")) {
    return bad;
  }
  if (const auto bad = outside("own_hops_m", own_hops_m, 0, 2, "a number from 0 to 2 m")) {
    return bad;
  }
  return outside("timing_sd_s", timing_sd_s, 0, 5, "a number from 0 to 5 s");
}

units::Result<MarkPlace> place_of_mark(double seconds, double distance_m,
                                       const PlaceOptions& options) {
  if (const auto bad = options.problem()) {
    return units::Refusal(*bad);
  }
  const auto slowing = deceleration(distance_m, options.release_speed_m_s);
  const auto end = roll_time(distance_m, options.release_speed_m_s);
  if (!slowing || !end) {
    return units::Refusal(slowing ? end.error() : slowing.error());
  }
  if (!(seconds >= 0)) {
    return units::refuse("mark_before_release", "mark_time", units::write_number(seconds),
                         "a number of seconds since release, 0 or more");
  }
  if (seconds > *end) {
    return units::refuse("mark_after_rest", "mark_time", units::write_number(seconds),
                         "no later than the ball's coming to rest, " + units::show_number(*end, 2) +
                             " s after release");
  }
  MarkPlace place;
  place.metres = options.release_speed_m_s * seconds - *slowing * seconds * seconds / 2;
  const double speed_there = options.release_speed_m_s - *slowing * seconds;
  place.standard_error_m = speed_there * options.timing_sd_s;
  place.own_hop = place.metres < options.own_hops_m;
  return place;
}

} // namespace baize::speed
