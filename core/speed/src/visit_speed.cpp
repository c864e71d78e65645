#include "baize/speed/green_speed.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

namespace baize::speed {

std::optional<VisitSpeed> visit_speed(const std::vector<green::Run>& runs, const Options& options) {
  // By the spot's name, so that the order of the runs changes nothing.
  std::map<std::string, std::vector<green::Run>> by_spot;
  for (const green::Run& run : runs) {
    by_spot[run.spot].push_back(run);
  }
  VisitSpeed visit;
  double variance = 0;
  for (const auto& [name, of_spot] : by_spot) {
    const auto spot = spot_speed(of_spot, options);
    if (!spot) {
      continue;
    }
    ++visit.spots;
    visit.speed_m += spot->speed_m;
    variance += spot->standard_error_m * spot->standard_error_m;
    visit.steep = visit.steep || spot->slope_class == SlopeClass::steep;
    for (const std::string_view warning : spot->warnings) {
      if (std::find(visit.warnings.begin(), visit.warnings.end(), warning) ==
          visit.warnings.end()) {
        visit.warnings.push_back(warning);
      }
    }
  }
  if (visit.spots == 0) {
    return std::nullopt;
  }
  visit.speed_m /= visit.spots;
  visit.standard_error_m = std::sqrt(variance) / visit.spots;
  return visit;
}

Change change(const VisitSpeed& first, const VisitSpeed& second) {
  constexpr double kNormal95 = 1.959963984540054; // 0.975 quantile of the standard normal
  Change found;
  found.difference_m = second.speed_m - first.speed_m;
  const double half = kNormal95 * std::hypot(first.standard_error_m, second.standard_error_m);
  found.low_m = found.difference_m - half;
  found.high_m = found.difference_m + half;
  found.real = found.low_m > 0 || found.high_m < 0;
  return found;
}

} // namespace baize::speed
