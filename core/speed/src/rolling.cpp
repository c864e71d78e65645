#include "baize/speed/rolling.h"

#include "baize/units/number.h"

#include <cmath>

namespace baize::speed {
namespace {

/// A ball rolling without slipping carries 2/7 of its energy in its spin.
constexpr double kRollingShare = 5.0 / 7.0;
constexpr double kLongestRoll = 30;
constexpr double kFastestRelease = 5;

units::Result<void> check(double distance_m, double release_speed_m_s) {
  if (!(distance_m > 0 && distance_m <= kLongestRoll)) {
    return units::refuse("distance_out_of_range", "distance", units::write_number(distance_m),
                         "a number above 0 and up to 30 m");
  }
  if (!(release_speed_m_s > 0 && release_speed_m_s <= kFastestRelease)) {
    return units::refuse("release_speed_out_of_range", "release_speed",
                         units::write_number(release_speed_m_s),
                         "a number above 0 and up to 5 m/s");
  }
  return {};
}

} // namespace

units::Result<double> deceleration(double distance_m, double release_speed_m_s) {
  return check(distance_m, release_speed_m_s).map([&] {
    return release_speed_m_s * release_speed_m_s / (2 * distance_m);
  });
}

units::Result<double> roll_time(double distance_m, double release_speed_m_s) {
  return check(distance_m, release_speed_m_s).map([&] {
    return 2 * distance_m / release_speed_m_s;
  });
}

double rolling_coefficient(double deceleration_m_s2) {
  return deceleration_m_s2 / (kRollingShare * kGravity);
}

units::Result<Slope> slope(double uphill_m, double downhill_m, double release_speed_m_s) {
  const auto up = deceleration(uphill_m, release_speed_m_s);
  if (!up) {
    return units::Refusal(up.error());
  }
  const auto down = deceleration(downhill_m, release_speed_m_s);
  if (!down) {
    return units::Refusal(down.error());
  }
  if (uphill_m > downhill_m) {
    return units::refuse("uphill_longer", "uphill", units::write_number(uphill_m),
                         "at most the distance downhill, " + units::write_number(downhill_m));
  }
  Slope found;
  found.level_deceleration_m_s2 = (*up + *down) / 2;
  found.gravity_component_m_s2 = (*up - *down) / 2;
  found.sine = found.gravity_component_m_s2 / (kRollingShare * kGravity);
  if (!(found.sine < 1)) {
    return units::refuse("distance_out_of_range", "uphill", units::write_number(uphill_m),
                         "a distance that a slope could give");
  }
  found.percent = 100 * std::tan(std::asin(found.sine));
  return found;
}

} // namespace baize::speed
