#include "baize/season/bounded_score.h"

#include "baize/stats/distributions.h"

#include <algorithm>
#include <cmath>

namespace baize::season {

double unrounded(double sd) {
  constexpr double kLeast = 0.1;
  return std::sqrt(std::max(sd * sd - 1.0 / 12, kLeast * kLeast));
}

double bounded_score(double level, double sd) {
  double mean = kBottom;
  for (int above = 1; above < kTop; ++above) {
    mean += stats::normal_cdf((level - (above + 0.5)) / sd);
  }
  return mean;
}

double level_of_score(double score, double sd) {
  double low = kBottom - 4 * sd;
  double high = kTop + 4 * sd;
  while (high - low > 1e-9) {
    const double middle = (low + high) / 2;
    (bounded_score(middle, sd) < score ? low : high) = middle;
  }
  return (low + high) / 2;
}

} // namespace baize::season
