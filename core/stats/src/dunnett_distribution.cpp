#include "baize/stats/dunnett.h"
#include "scale_mixture.h"

#include <limits>

namespace baize::stats {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kRoot2 = 1.4142135623730951;
constexpr double kRoot2Pi = 2.5066282746310002;

double upper(double z) {
  return std::erfc(z / kRoot2) / 2;
}

/// What the rule needs, worked out once.
struct Shared {
  const std::vector<double>& lambda;
  bool two_sided;
  std::vector<double> root; ///< sqrt(1 - lambda^2)
  double greatest = 0;      ///< lambda
  double step = 0;          ///< of z
};

Shared shared(const std::vector<double>& lambda, bool two_sided) {
  Shared all{lambda, two_sided, {}, 0, 0};
  // Each factor turns within r / l: with the density's own width, the spectrum of
  // their product falls as that of a normal curve of this variance.
  double sharpness = 1;
  for (const double one : lambda) {
    all.root.push_back(std::sqrt((1 - one) * (1 + one)));
    all.greatest = std::max(all.greatest, one);
    sharpness += one * one / ((1 - one) * (1 + one));
  }
  all.step = 0.7 / std::sqrt(sharpness);
  return all;
}

/// 1 - product over i, given z, without subtracting from 1.
double given(const Shared& all, double z, double w) {
  double log_all_below = 0;
  for (std::size_t i = 0; i < all.lambda.size(); ++i) {
    const double middle = all.lambda[i] * z;
    double above = upper((w + middle) / all.root[i]);
    if (all.two_sided) {
      above += upper((w - middle) / all.root[i]);
    }
    log_all_below += std::log1p(-std::min(above, 1.0));
  }
  return -std::expm1(log_all_below);
}

/// P(largest >= w) of normal values.
double normal_tail(const Shared& all, double w) {
  // Far out it is the z that carry one treatment across that count.
  const double reach = 9 + all.greatest * std::max(0.0, w);
  const double end = all.two_sided ? reach : 9;
  const auto steps = static_cast<int>((reach + end) / all.step) + 1;
  double sum = 0;
  for (int i = 0; i <= steps; ++i) {
    const double z = -reach + i * all.step;
    sum += std::exp(-z * z / 2) * given(all, z, w);
  }
  return sum * all.step / kRoot2Pi;
}

bool known(const std::vector<double>& lambda, double df) {
  for (const double one : lambda) {
    if (!(one > 0 && one < 1)) {
      return false;
    }
  }
  return !lambda.empty() && lambda.size() <= 200 && df >= 1 && (df <= 1e6 || std::isinf(df));
}

double tail(const Shared& all, double t, double df) {
  return std::min(
      1.0, detail::scale_mixture(df, t * t, 1, [&](double s) { return normal_tail(all, t * s); }));
}

} // namespace

double dunnett_upper(double t, const std::vector<double>& lambda, double df, bool two_sided) {
  if (!known(lambda, df) || std::isnan(t) || (two_sided && t < 0)) {
    return kNaN;
  }
  if (std::isinf(t) || (two_sided && t == 0)) {
    return t > 0 ? 0 : 1;
  }
  return tail(shared(lambda, two_sided), t, df);
}

double dunnett_critical(double alpha, const std::vector<double>& lambda, double df,
                        bool two_sided) {
  if (!known(lambda, df) || !(alpha > 0 && alpha < (two_sided ? 1 : 0.5))) {
    return kNaN;
  }
  const Shared all = shared(lambda, two_sided);
  return detail::tail_quantile(alpha, detail::Tail::upper,
                               [&](double t) { return tail(all, t, df); });
}

} // namespace baize::stats
