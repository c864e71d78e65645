#pragma once

#include "baize/speed/rolling.h"

#include <optional>

namespace baize::speed {

struct PlaceOptions {
  double release_speed_m_s = kReleaseSpeed;
  /// The ball still hops from the ramp's foot before this: 0.3 to 0.5 m
  /// (common practice, no source).
  double own_hops_m = 0.5;
  /// Standard deviation of the thumb's time, release to mark (common practice,
  /// no source).
  double timing_sd_s = 0.1;
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Where on the line something was seen.
struct MarkPlace {
  double metres = 0;           ///< from the ramp's foot
  double standard_error_m = 0; ///< the ball's speed there times the timing's deviation
  bool own_hop = false;        ///< within the ramp's own hops: says nothing of the green
};

/// x = v0 t - a t^2 / 2 with a = v0^2 / (2 S). `seconds` is since release,
/// `distance_m` the roll's own distance, so that slope is in it. Refuses
/// "mark_after_rest" where the time is later than the roll's end 2 S / v0 (it is
/// not moved to the end: the time or the distance is wrong), "mark_before_release"
/// where it is below 0 or not a number, and as deceleration does.
units::Result<MarkPlace> place_of_mark(double seconds, double distance_m,
                                       const PlaceOptions& options = {});

} // namespace baize::speed
