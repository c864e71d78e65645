#include "baize/stats/distributions.h"

#include "baize/stats/boost_policy.h"

#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

#include <cmath>
#include <limits>

namespace baize::stats {
namespace {

namespace bm = boost::math;

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinity = std::numeric_limits<double>::infinity();

/// The range of a distribution, so that its ends need no library call: libraries
/// differ on what they answer there.
struct Range {
  double low;
  double high;
};
constexpr Range kWhole{-kInfinity, kInfinity};
constexpr Range kPositive{0, kInfinity};
constexpr Range kUnit{0, 1};

bool positive(double parameter) {
  return parameter > 0 && std::isfinite(parameter);
}

template <class Distribution> double lower(const Distribution& of, Range range, double x) {
  if (std::isnan(x)) {
    return kNaN;
  }
  if (x <= range.low) {
    return 0;
  }
  return x >= range.high ? 1 : bm::cdf(of, x);
}

template <class Distribution> double upper(const Distribution& of, Range range, double x) {
  if (std::isnan(x)) {
    return kNaN;
  }
  if (x <= range.low) {
    return 1;
  }
  return x >= range.high ? 0 : bm::cdf(bm::complement(of, x));
}

template <class Distribution> double inverse(const Distribution& of, Range range, double p) {
  if (!(p >= 0 && p <= 1)) {
    return kNaN;
  }
  if (p == 0) {
    return range.low;
  }
  return p == 1 ? range.high : bm::quantile(of, p);
}

using Normal = bm::normal_distribution<double, MathPolicy>;
using T = bm::students_t_distribution<double, MathPolicy>;
using ChiSquared = bm::chi_squared_distribution<double, MathPolicy>;
using F = bm::fisher_f_distribution<double, MathPolicy>;
using Beta = bm::beta_distribution<double, MathPolicy>;

} // namespace

double normal_cdf(double z) {
  return lower(Normal(), kWhole, z);
}
double normal_upper(double z) {
  return upper(Normal(), kWhole, z);
}
double normal_quantile(double p) {
  return inverse(Normal(), kWhole, p);
}

double t_cdf(double t, double df) {
  return positive(df) ? lower(T(df), kWhole, t) : kNaN;
}
double t_upper(double t, double df) {
  return positive(df) ? upper(T(df), kWhole, t) : kNaN;
}
double t_quantile(double p, double df) {
  return positive(df) ? inverse(T(df), kWhole, p) : kNaN;
}

double chi_squared_cdf(double x, double df) {
  return positive(df) ? lower(ChiSquared(df), kPositive, x) : kNaN;
}
double chi_squared_upper(double x, double df) {
  return positive(df) ? upper(ChiSquared(df), kPositive, x) : kNaN;
}
double chi_squared_quantile(double p, double df) {
  return positive(df) ? inverse(ChiSquared(df), kPositive, p) : kNaN;
}

double f_cdf(double f, double df1, double df2) {
  return positive(df1) && positive(df2) ? lower(F(df1, df2), kPositive, f) : kNaN;
}
double f_upper(double f, double df1, double df2) {
  return positive(df1) && positive(df2) ? upper(F(df1, df2), kPositive, f) : kNaN;
}
double f_quantile(double p, double df1, double df2) {
  return positive(df1) && positive(df2) ? inverse(F(df1, df2), kPositive, p) : kNaN;
}

double beta_cdf(double x, double a, double b) {
  return positive(a) && positive(b) ? lower(Beta(a, b), kUnit, x) : kNaN;
}
double beta_upper(double x, double a, double b) {
  return positive(a) && positive(b) ? upper(Beta(a, b), kUnit, x) : kNaN;
}
double beta_quantile(double p, double a, double b) {
  return positive(a) && positive(b) ? inverse(Beta(a, b), kUnit, p) : kNaN;
}

} // namespace baize::stats
