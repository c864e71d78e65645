#include "baize/season/growth_curve.h"

#include <algorithm>
#include <array>

namespace baize::season {
namespace {

constexpr int kYear = 366;
constexpr int kWindow = 15;

/// Mean growth potential by day of the year; a half where the file says nothing.
std::array<double, kYear> normals(const climate::Weather& weather,
                                  const climate::GrowthOptions& options) {
  std::array<double, kYear> sum{};
  std::array<int, kYear> count{};
  for (const auto& [day, values] : weather) {
    if (const auto growth = climate::growth_potential(values, options)) {
      const auto at = static_cast<std::size_t>(units::day_of_year(day) - 1);
      sum[at] += *growth;
      ++count[at];
    }
  }
  std::array<double, kYear> mean{};
  for (int i = 0; i < kYear; ++i) {
    double total = 0;
    int days = 0;
    for (int j = i - kWindow; j <= i + kWindow; ++j) {
      const auto at = static_cast<std::size_t>((j + kYear) % kYear);
      total += sum[at];
      days += count[at];
    }
    mean[static_cast<std::size_t>(i)] = days > 0 ? total / days : 0.5;
  }
  return mean;
}

} // namespace

GrowthCurve::GrowthCurve(const climate::Weather& weather, const climate::GrowthOptions& options,
                         units::Period days, Clock clock)
    : first_(days.first) {
  const auto normal = normals(weather, options);
  double sum = 0;
  int missing = 0;
  for (units::Day day = days.first; day <= days.last; ++day) {
    const auto found = weather.find(day);
    std::optional<double> growth;
    if (found != weather.end()) {
      growth = climate::growth_potential(found->second, options);
    }
    missing += growth ? 0 : 1;
    const double here =
        growth ? *growth : normal[static_cast<std::size_t>(units::day_of_year(day) - 1)];
    sum += clock == Clock::calendar_days ? 1 : here;
    sum_.push_back(sum);
    missing_.push_back(missing);
  }
}

double GrowthCurve::at(units::Day day) const {
  if (sum_.empty() || day < first_) {
    return 0;
  }
  return sum_[std::min(static_cast<std::size_t>(day - first_), sum_.size() - 1)];
}

double GrowthCurve::between(units::Day from, units::Day to) const {
  return to > from ? at(to) - at(from) : 0;
}

int GrowthCurve::missing(units::Day until) const {
  if (missing_.empty() || until < first_) {
    return 0;
  }
  return missing_[std::min(static_cast<std::size_t>(until - first_), missing_.size() - 1)];
}

} // namespace baize::season
