#include "baize/season/fit.h"
#include "baize/stats/descriptive.h"

#include <algorithm>
#include <cmath>

namespace baize::season {
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
  estimate.low = stats::quantile_of_sorted(draws, 0.025);
  estimate.high = stats::quantile_of_sorted(draws, 0.975);
  return estimate;
}

} // namespace baize::season
