#include "pair_sums.h"

namespace baize::observers {

namespace {

constexpr double kNothing = 1e-9; ///< what rounding leaves of a variance of scores

} // namespace

void PairSums::add(double first, double second) {
  n += 1;
  x += first;
  y += second;
  xx += first * first;
  yy += second * second;
  xy += first * second;
}

PairSums PairSums::without(const PairSums& part) const {
  return {n - part.n, x - part.x, y - part.y, xx - part.xx, yy - part.yy, xy - part.xy};
}

std::optional<double> icc_random_single(const PairSums& sums) {
  if (sums.n < 2) {
    return std::nullopt;
  }
  const double n = sums.n;
  const double total = sums.x + sums.y;
  const double gap = sums.x - sums.y;
  const double of_sums = (sums.xx + sums.yy + 2 * sums.xy - total * total / n) / (n - 1);
  const double of_gaps = (sums.xx + sums.yy - 2 * sums.xy - gap * gap / n) / (n - 1);
  const double items = of_sums / 2;
  const double residual = of_gaps / 2;
  const double observers = gap * gap / n / 2;
  const double below = items + residual + 2 * (observers - residual) / n;
  if (items <= kNothing || below <= kNothing) {
    return std::nullopt;
  }
  return (items - residual) / below;
}

std::optional<double> concordance_of(const PairSums& sums) {
  if (sums.n < 2) {
    return std::nullopt;
  }
  const double n = sums.n;
  const double x = sums.xx / n - sums.x / n * (sums.x / n);
  const double y = sums.yy / n - sums.y / n * (sums.y / n);
  const double both = sums.xy / n - sums.x / n * (sums.y / n);
  if (x <= kNothing || y <= kNothing) {
    return std::nullopt;
  }
  const double gap = (sums.x - sums.y) / n;
  return 2 * both / (x + y + gap * gap);
}

} // namespace baize::observers
