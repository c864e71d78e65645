#include "aft_density.h"

#include "baize/stats/distributions.h"

#include <cmath>
#include <numbers>

namespace baize::stats::detail {
namespace {

/// What the derivatives of log(F(b) - F(a)) are made of: its value, the densities
/// at both ends over F(b) - F(a), and the slopes of the log density there. Written
/// so that neither end's tail cancels.
struct Parts {
  double value = 0;
  double at_a = 0;
  double at_b = 0;
  double slope_a = 0;
  double slope_b = 0;
};

double normal_log_density(double w) {
  return -0.5 * (w * w + std::log(2 * std::numbers::pi));
}

/// F = 1 - exp(-exp w).
Parts extreme_value(double a, double b) {
  const double ea = std::exp(a);
  const double eb = std::exp(b);
  const double inside = -std::expm1(ea - eb); // share of what was left at a
  Parts parts{-ea + std::log(inside), ea / inside, 0, 1 - ea, 0};
  if (std::isfinite(eb)) {
    parts.at_b = eb * std::exp(ea - eb) / inside;
    parts.slope_b = 1 - eb;
  }
  return parts;
}

/// The logistic distribution at w, from one exponential.
struct Logistic {
  double below;
  double above;
  double far; ///< exp(-|w|)
};
Logistic logistic(double w) {
  const double far = std::exp(-std::fabs(w));
  const double tail = far / (1 + far);
  const double rest = 1 / (1 + far);
  return w > 0 ? Logistic{rest, tail, far} : Logistic{tail, rest, far};
}

/// 1 - exp(a - b) for a < b, from exp(-|a|) and exp(-|b|) where nothing cancels.
double gap(double a, double b, double far_a, double far_b) {
  const double ratio = a > 0 ? far_b / far_a : b > 0 ? far_a * far_b : far_a / far_b;
  return ratio < 0.5 ? 1 - ratio : -std::expm1(a - b); // 0 / 0 in the farthest tails as well
}

/// F(b) - F(a) = F(b) (1 - F(a)) (1 - exp(a - b)).
Parts log_logistic(double a, double b) {
  const auto [fa, sa, far_a] = logistic(a);
  const auto [fb, sb, far_b] = logistic(b);
  const double inside = gap(a, b, far_a, far_b);
  const double share = fb * sa * inside;
  Parts parts{std::log(share), fa / fb / inside, sb / sa / inside, sa - fa, sb - fb};
  if (!(share > 1e-290)) { // too small a number: by logarithms
    const double log_fb = b > 0 ? -std::log1p(std::exp(-b)) : b - std::log1p(std::exp(b));
    const double log_sa = a < 0 ? -std::log1p(std::exp(a)) : -a - std::log1p(std::exp(-a));
    parts.value = log_fb + log_sa + std::log(inside);
  }
  return parts;
}

Parts normal(double a, double b) {
  const double inside = a > 0 ? normal_upper(a) - normal_upper(b) : normal_cdf(b) - normal_cdf(a);
  Parts parts;
  parts.value = std::log(inside);
  if (std::isfinite(a)) {
    parts.at_a = std::exp(normal_log_density(a) - parts.value);
    parts.slope_a = -a;
  }
  if (std::isfinite(b)) {
    parts.at_b = std::exp(normal_log_density(b) - parts.value);
    parts.slope_b = -b;
  }
  return parts;
}

} // namespace

Exact exact_term(AftDistribution distribution, double w) {
  switch (distribution) {
  case AftDistribution::log_normal:
    return {normal_log_density(w), -w, -1};
  case AftDistribution::log_logistic: {
    const auto [below, above, far] = logistic(w);
    return {-std::fabs(w) - 2 * std::log1p(far), above - below, -2 * below * above};
  }
  case AftDistribution::exponential:
  case AftDistribution::weibull:
    break;
  }
  return {w - std::exp(w), 1 - std::exp(w), -std::exp(w)};
}

Between between_term(AftDistribution distribution, double a, double b) {
  const Parts p = distribution == AftDistribution::log_normal     ? normal(a, b)
                  : distribution == AftDistribution::log_logistic ? log_logistic(a, b)
                                                                  : extreme_value(a, b);
  return {p.value,         -p.at_a,
          p.at_b,          -p.at_a * (p.slope_a + p.at_a),
          p.at_a * p.at_b, p.at_b * (p.slope_b - p.at_b)};
}

double standard_quantile(AftDistribution distribution, double share) {
  switch (distribution) {
  case AftDistribution::log_normal:
    return normal_quantile(share);
  case AftDistribution::log_logistic:
    return std::log(share) - std::log1p(-share);
  case AftDistribution::exponential:
  case AftDistribution::weibull:
    break;
  }
  return std::log(-std::log1p(-share));
}

} // namespace baize::stats::detail
