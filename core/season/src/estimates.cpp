#include "baize/season/fit.h"

#include <algorithm>
#include <cmath>

namespace baize::season {
namespace {

/// Between the two nearest draws (definition 7 of Hyndman and Fan 1996).
double quantile(const std::vector<double>& sorted, double share) {
  const double place = share * static_cast<double>(sorted.size() - 1);
  const auto below = static_cast<std::size_t>(place);
  const std::size_t above = std::min(below + 1, sorted.size() - 1);
  const double part = place - static_cast<double>(below);
  return part == 0 ? sorted[below] : sorted[below] + part * (sorted[above] - sorted[below]);
}

} // namespace

Estimate estimate_of(std::vector<double> draws) {
  Estimate estimate;
  if (draws.empty()) {
    return estimate;
  }
  std::sort(draws.begin(), draws.end());
  double sum = 0;
  for (const double draw : draws) {
    sum += draw;
  }
  estimate.value = sum / static_cast<double>(draws.size());
  double squares = 0;
  for (const double draw : draws) {
    squares += (draw - estimate.value) * (draw - estimate.value);
  }
  estimate.standard_error =
      draws.size() > 1 ? std::sqrt(squares / static_cast<double>(draws.size() - 1)) : 0;
  estimate.low = quantile(draws, 0.025);
  estimate.high = quantile(draws, 0.975);
  return estimate;
}

} // namespace baize::season
