#include "baize/stats/area_under_curve.h"

#include "checks.h"

namespace baize::stats {
namespace {

std::optional<units::Problem> trouble(std::span<const double> times,
                                      std::span<const double> values) {
  if (const auto bad = lengths_differ("values", values.size(), times.size())) {
    return bad;
  }
  if (const auto bad = too_few("number of readings", times.size(), 2)) {
    return bad;
  }
  if (const auto bad = not_finite("times", times)) {
    return bad;
  }
  if (const auto bad = not_finite("values", values)) {
    return bad;
  }
  for (std::size_t i = 1; i < times.size(); ++i) {
    if (!(times[i] > times[i - 1])) {
      return units::Problem{"not_rising", "times", units::write_number(times[i]),
                            "later than the time before it, " + units::write_number(times[i - 1]),
                            "value " + std::to_string(i + 1)};
    }
  }
  return std::nullopt;
}

} // namespace

Area area_under_curve(std::span<const double> times, std::span<const double> values) {
  Area area;
  if (const auto bad = trouble(times, values)) {
    area.summary = refused(*bad);
    return area;
  }
  area.trapezoid = 0;
  for (std::size_t i = 1; i < times.size(); ++i) {
    area.trapezoid += (values[i] + values[i - 1]) / 2 * (times[i] - times[i - 1]);
  }
  area.duration = times.back() - times.front();
  area.stairs = area.trapezoid + (values.front() + values.back()) / 2 * area.duration /
                                     static_cast<double>(times.size() - 1);
  area.mean_height = area.trapezoid / area.duration;
  area.summary = done_if_finite({area.duration, area.trapezoid, area.stairs, area.mean_height});
  return area;
}

} // namespace baize::stats
