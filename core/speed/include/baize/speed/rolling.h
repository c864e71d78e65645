#pragma once

#include "baize/units/problem.h"

#include <optional>

namespace baize::speed {

// A ball that rolls without slipping off the release ramp slows down evenly:
// S = v0^2 / (2 a). Penner AR (2002) The physics of putting, Can. J. Phys.
// 80:83-96. The ramp's first hops and the air are left out.

/// 6.00 ft/s at the foot of the ramp (instruction booklet for the release ramp,
/// from memory). Losses in the groove are in it already.
inline constexpr double kReleaseSpeed = 1.8288;
inline constexpr double kGravity = 9.81; ///< m/s^2

/// Deceleration in m/s^2 of a roll of `distance_m`: v0^2 / (2 S). Its relative
/// error is the distance's, and twice the release speed's. Refuses "distance_out_of_range" unless
/// the distance is above 0 and up to 30 m, and "release_speed_out_of_range" unless the speed is
/// above 0 and up to 5 m/s.
units::Result<double> deceleration(double distance_m, double release_speed_m_s = kReleaseSpeed);

/// From release to rest, in seconds: 2 S / v0. Refuses as deceleration does.
units::Result<double> roll_time(double distance_m, double release_speed_m_s = kReleaseSpeed);

/// Rolling coefficient of a deceleration on the level: 7/5 a / g.
double rolling_coefficient(double deceleration_m_s2);

/// What two directions on one line say of the ground between them.
struct Slope {
  double level_deceleration_m_s2 = 0; ///< a: what the grass alone does
  double gravity_component_m_s2 = 0;  ///< b = 5/7 g sin(slope)
  double sine = 0;
  double percent = 0; ///< 100 tan(slope)
};

/// From the means uphill and downhill, in metres: U = v0^2/(2(a+b)),
/// D = v0^2/(2(a-b)). The harmonic mean of U and D is v0^2/(2a), which is why
/// the slope formula 2UD/(U+D) works. True for an even slope only: not on a
/// crown or in a hollow. Refuses as deceleration does, and "uphill_longer" where
/// uphill is longer than downhill.
units::Result<Slope> slope(double uphill_m, double downhill_m,
                           double release_speed_m_s = kReleaseSpeed);

} // namespace baize::speed
