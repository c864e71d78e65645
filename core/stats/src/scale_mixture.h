#pragma once

#include <algorithm>
#include <cmath>

/// What the studentized range and Dunnett's t share: the mean over the error of the
/// error, and quantiles from a tail that is nearly straight in logarithms.
namespace baize::stats::detail {

enum class Tail { lower, upper };

/// Terms below exp(-45) of the largest are left out: below the last digit.
constexpr double kFarAway = 45;

/// log of the density of u = log(s), without the part that does not depend on u.
inline double log_kernel(double u, double df) {
  return df * (u - std::expm1(2 * u) / 2);
}

/// log of the constant: df^(df/2) exp(-df/2) / (Gamma(df/2) 2^(df/2-1)). For
/// large df by Stirling's series, where the parts would cancel.
inline double log_constant(double df) {
  const double half = df / 2;
  if (df < 40) {
    return half * std::log(df) - half - std::lgamma(half) - (half - 1) * std::log(2.0);
  }
  const double r = 1 / (half * half);
  const double series = (1.0 / 12 - r * (1.0 / 360 - r * (1.0 / 1260 - r / 1680))) / half;
  return std::log(2.0) - (std::log(6.283185307179586) - std::log(half)) / 2 - series;
}

/// Mean of `at(s)` over s, the root of chi-squared over its degrees of freedom.
/// fall: `at` falls in the upper tail no faster than exp(-fall s^2); rise: in the
/// lower one it rises no faster than s^rise. Infinite df: at(1).
template <class At> double scale_mixture(double df, double fall, double rise, const At& at) {
  if (std::isinf(df)) {
    return at(1.0);
  }
  const double x = kFarAway / df;
  // The kernel falls by exp(-45) within these of its peak at 0 ...
  const double left = x + 1.5 * std::sqrt(x);
  const double right = std::min(std::sqrt(x), std::log(4 * x + 4) / 2);
  // ... and the other factor moves the peak: a wide range down, a narrow one up.
  const double from = -left - std::log1p(fall / df) / 2;
  const double to = right + std::log1p(rise / df) / 2;
  const double step = std::min(0.1, 0.5 / std::sqrt(2 * df));
  const double constant = log_constant(df);
  const int steps = static_cast<int>((to - from) / step) + 1;
  double sum = 0;
  for (int i = 0; i <= steps; ++i) {
    const double u = from + i * step;
    sum += std::exp(constant + log_kernel(u, df)) * at(std::exp(u));
  }
  return step * sum;
}

/// The x above 0 with probability(x) = p. Both tails are nearly straight in
/// logarithms, so a secant kept within its bracket (Anderson and Bjoerck 1973)
/// needs few steps. NaN where none is found.
template <class Probability>
double tail_quantile(double p, Tail tail, const Probability& probability) {
  const double target = std::log(p);
  const double sign = tail == Tail::lower ? 1 : -1;
  const auto excess = [&](double x) {
    const double found = probability(std::exp(x));
    // Underflow to 0 stands far below any target.
    return sign * (found > 0 ? std::log(found) - target : -800 - target);
  };
  double low = std::log(3.0);
  double high = low;
  double at_low = excess(low);
  double at_high = at_low;
  double stride = 0.5;
  while (at_low > 0 && low > -700) {
    high = low;
    at_high = at_low;
    low -= stride;
    at_low = excess(low);
    stride *= 2;
  }
  while (at_high < 0 && high < 700) {
    low = high;
    at_low = at_high;
    high += stride;
    at_high = excess(high);
    stride *= 2;
  }
  if (at_low > 0 || at_high < 0) {
    return std::nan("");
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

} // namespace baize::stats::detail
