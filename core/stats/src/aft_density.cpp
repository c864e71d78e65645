#include "aft_density.h"

#include "baize/stats/distributions.h"
#include "logistic.h"

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

Parts log_logistic(double a, double b) {
  const auto [low, high, inside, log_share] = logistic_span(a, b, b - a);
  return {log_share, low.below / high.below / inside, high.above / low.above / inside,
          low.above - low.below, high.above - high.below};
}

Parts normal(double a, double b) {
  Parts parts;
  parts.value = log_normal_share(a, b);
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
  const double hazard = std::exp(w);
  return {w - hazard, 1 - hazard, -hazard};
}

double log_normal_share(double a, double b) {
  return std::log(a > 0 ? normal_upper(a) - normal_upper(b) : normal_cdf(b) - normal_cdf(a));
}

Between between_term(AftDistribution distribution, double a, double b) {
  const Parts p = distribution == AftDistribution::log_normal ? normal(a, b) : log_logistic(a, b);
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
