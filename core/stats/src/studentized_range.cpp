#include "baize/stats/studentized_range.h"

#include "scale_mixture.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace baize::stats {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kRoot2 = 1.4142135623730951;
constexpr double kRoot2Pi = 2.5066282746310002;

using detail::Tail;

double phi(double z) {
  return std::exp(-z * z / 2) / kRoot2Pi;
}
double cumulative(double z) {
  return std::erfc(-z / kRoot2) / 2;
}

/// Phi(z) - Phi(z - w) without losing digits.
double gap_of(double z, double w) {
  if (w < 0.02) {
    const double c = z - w / 2; // Taylor series about the middle
    const double c2 = c * c;
    const double w2 = w * w;
    return w * phi(c) * (1 + w2 * ((c2 - 1) / 24 + w2 * (c2 * (c2 - 6) + 3) / 1920));
  }
  // Above the middle the upper tails keep the digits.
  return z > w / 2 ? cumulative(w - z) - cumulative(-z) : cumulative(z) - cumulative(z - w);
}

/// [Phi(z) - Phi(z-w)]^m, or what it lacks of Phi(z)^m. The integral of
/// k phi Phi^m is 1, so the second gives 1 - W without subtracting from 1.
double power_of_gap(double z, double w, int m, Tail tail) {
  if (tail == Tail::upper) {
    const double above = cumulative(z);
    const double below = cumulative(z - w);
    return above > 0 ? -std::pow(above, m) * std::expm1(m * std::log1p(-below / above)) : 0;
  }
  const double gap = gap_of(z, w);
  return gap > 0 ? std::pow(gap, m) : 0;
}

/// The range of k standard normal values, its distribution function or tail.
double range_probability(double w, int k, Tail tail) {
  if (w <= 0) {
    return tail == Tail::lower ? 0 : 1;
  }
  // Beyond this the tail, about exp(-w^2 / 4), is no longer a double.
  if (w > 54) {
    return tail == Tail::lower ? 1 : 0;
  }
  // The trapezoidal rule errs by about exp(-2 pi^2 / (k step^2)).
  const double step = 0.7 / std::sqrt(std::max(k, 3));
  // The terms that count lie about w / 2 in the upper tail, and in the lower
  // one no further than about 3, where the largest of 200 values falls.
  const double middle = tail == Tail::upper ? w / 2 : std::min(w / 2, 3.0);
  const double first = tail == Tail::upper ? middle - 7.5 : -7.5;
  const int steps = static_cast<int>((middle + 10.5 - first) / step);
  double sum = 0;
  for (int i = 0; i <= steps; ++i) {
    const double z = first + i * step;
    sum += phi(z) * power_of_gap(z, w, k - 1, tail);
  }
  return k * step * sum;
}

double probability(double q, int k, double df, Tail tail) {
  return detail::scale_mixture(df, q * q / 2, k - 1,
                               [&](double s) { return range_probability(q * s, k, tail); });
}

bool known(int k, double df) {
  return k >= 2 && k <= 200 && df >= 1 && (df <= 1e6 || std::isinf(df));
}

double tail_probability(double q, int k, double df, Tail tail) {
  if (!known(k, df) || !(q >= 0)) {
    return kNaN;
  }
  if (q == 0 || std::isinf(q)) {
    return (q == 0) == (tail == Tail::lower) ? 0 : 1;
  }
  return std::min(1.0, probability(q, k, df, tail));
}

double solve(double p, int k, double df, Tail tail) {
  return detail::tail_quantile(p, tail, [&](double q) { return tail_probability(q, k, df, tail); });
}

} // namespace

double studentized_range_cdf(double q, int k, double df) {
  return tail_probability(q, k, df, Tail::lower);
}

double studentized_range_upper(double q, int k, double df) {
  return tail_probability(q, k, df, Tail::upper);
}

double studentized_range_quantile(double p, int k, double df) {
  if (!known(k, df) || !(p >= 0 && p <= 1)) {
    return kNaN;
  }
  if (p == 0 || p == 1) {
    return p == 0 ? 0 : kInfinity;
  }
  return p < 0.5 ? solve(p, k, df, Tail::lower) : solve(1 - p, k, df, Tail::upper);
}

double studentized_range_critical(double alpha, int k, double df) {
  if (!known(k, df) || !(alpha >= 0 && alpha <= 1)) {
    return kNaN;
  }
  if (alpha == 0 || alpha == 1) {
    return alpha == 0 ? kInfinity : 0;
  }
  return alpha > 0.5 ? solve(1 - alpha, k, df, Tail::lower) : solve(alpha, k, df, Tail::upper);
}

} // namespace baize::stats
