#include "baize/stats/studentized_range.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace baize::stats {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kRoot2 = 1.4142135623730951;
constexpr double kRoot2Pi = 2.5066282746310002;
constexpr double kTwoPi = 6.283185307179586;
/// Terms below exp(-45) of the largest are left out: below the last digit.
constexpr double kFarAway = 45;

enum class Tail { lower, upper };

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

/// log of the density of u = log(s), without the part that does not depend on u.
double log_kernel(double u, double df) {
  return df * (u - std::expm1(2 * u) / 2);
}

/// log of the constant: df^(df/2) exp(-df/2) / (Gamma(df/2) 2^(df/2-1)). For
/// large df by Stirling's series, where the parts would cancel.
double log_constant(double df) {
  const double half = df / 2;
  if (df < 40) {
    return half * std::log(df) - half - std::lgamma(half) - (half - 1) * std::log(2.0);
  }
  const double r = 1 / (half * half);
  const double series = (1.0 / 12 - r * (1.0 / 360 - r * (1.0 / 1260 - r / 1680))) / half;
  return std::log(2.0) - (std::log(kTwoPi) - std::log(half)) / 2 - series;
}

double probability(double q, int k, double df, Tail tail) {
  if (std::isinf(df)) {
    return range_probability(q, k, tail);
  }
  const double x = kFarAway / df;
  // The kernel falls by exp(-45) within these of its peak at 0 ...
  const double left = x + 1.5 * std::sqrt(x);
  const double right = std::min(std::sqrt(x), std::log(4 * x + 4) / 2);
  // ... and the other factor moves the peak: a wide range down, a narrow one up.
  const double from = -left - std::log1p(q * q / (2 * df)) / 2;
  const double to = right + std::log1p((k - 1) / df) / 2;
  const double step = std::min(0.1, 0.5 / std::sqrt(2 * df));
  const double constant = log_constant(df);
  const int steps = static_cast<int>((to - from) / step) + 1;
  double sum = 0;
  for (int i = 0; i <= steps; ++i) {
    const double u = from + i * step;
    sum += std::exp(constant + log_kernel(u, df)) * range_probability(q * std::exp(u), k, tail);
  }
  return step * sum;
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

/// Solves log P(exp(x)) = log p. Both tails are nearly straight in logarithms, so
/// a secant kept within its bracket (Anderson and Bjoerck 1973) needs few steps.
double solve(double p, int k, double df, Tail tail) {
  const double target = std::log(p);
  const double sign = tail == Tail::lower ? 1 : -1;
  const auto excess = [&](double x) {
    const double found = tail_probability(std::exp(x), k, df, tail);
    // Underflow to 0 stands far below any target.
    return sign * (found > 0 ? std::log(found) - target : -800 - target);
  };
  double low = std::log(3.0);
  double high = low;
  double at_low = excess(low);
  double at_high = at_low;
  for (double stride = 0.5; at_low > 0 && low > -700; stride *= 2) {
    high = low;
    at_high = at_low;
    low -= stride;
    at_low = excess(low);
  }
  for (double stride = 0.5; at_high < 0 && high < 700; stride *= 2) {
    low = high;
    at_low = at_high;
    high += stride;
    at_high = excess(high);
  }
  if (at_low > 0 || at_high < 0) {
    return kNaN;
  }
  for (int i = 0; i < 200 && high - low > 1e-12 && at_low < 0 && at_high > 0; ++i) {
    double middle = low - at_low * (high - low) / (at_high - at_low);
    if (!(middle > low && middle < high)) {
      middle = (low + high) / 2;
    }
    const double at_middle = excess(middle);
    const bool below = at_middle < 0;
    double& kept = below ? at_high : at_low;
    const double replaced = below ? at_low : at_high;
    (below ? low : high) = middle;
    (below ? at_low : at_high) = at_middle;
    const double share = 1 - at_middle / replaced;
    kept *= share > 0 ? share : 0.5;
    if (std::fabs(at_middle) < 1e-13 * std::max(1.0, std::fabs(target))) {
      return std::exp(middle);
    }
  }
  return std::exp((low + high) / 2);
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
