#include "loss_area.h"

#include <algorithm>

namespace baize::recovery {

// A visit speaks for half a day to either side. What lies between two visits'
// half days, and between the work and the first visit's, nobody saw: there the
// bounds take the better and the worse neighbour.
LossArea loss_area(std::span<const LossPoint> points, double worst) {
  LossArea area;
  const LossPoint& first = points.front();
  if (first.days_after > 0) {
    const double unseen = first.days_after - 0.5;
    area.score_days = first.days_after * first.loss;
    area.low = first.loss / 2; // the neighbour on the left is the green before the work
    area.high = first.loss / 2 + unseen * std::max(worst, first.loss);
  }
  for (std::size_t i = 1; i < points.size(); ++i) {
    const LossPoint& a = points[i - 1];
    const LossPoint& b = points[i];
    const double seen = (a.loss + b.loss) / 2;
    const int unseen = b.days_after - a.days_after - 1;
    area.score_days += seen + unseen * seen;
    area.low += seen + unseen * std::min(a.loss, b.loss);
    area.high += seen + unseen * std::max(a.loss, b.loss);
  }
  return area;
}

std::optional<double> growth_weighted(std::span<const LossPoint> points, units::Day work,
                                      const climate::Weather& weather,
                                      const climate::GrowthOptions& options) {
  double sum = 0;
  LossPoint a{0, points.front().loss}; // held back to the work
  for (const LossPoint& b : points) {
    const int days = b.days_after - a.days_after;
    for (int n = 1; n <= days; ++n) {
      const auto found = weather.find(work + (a.days_after + n));
      const auto growth =
          found == weather.end() ? std::nullopt : climate::growth_potential(found->second, options);
      if (!growth) {
        return std::nullopt;
      }
      sum += *growth * (a.loss + (b.loss - a.loss) * (n - 0.5) / days);
    }
    a = b;
  }
  return sum;
}

} // namespace baize::recovery
