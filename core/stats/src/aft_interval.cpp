#include "aft_interval.h"

#include "aft_density.h"
#include "logistic.h"

#include <cmath>

namespace baize::stats::detail {
namespace {

/// At an infinite end all derivatives are 0; infinity must not meet them.
double finite_or_zero(double y) {
  return std::isfinite(y) ? y : 0;
}

/// From the derivatives in both ends.
AftTerm normal_term(const AftRow& row, double a, double b) {
  const Between term = between_term(AftDistribution::log_normal, a, b);
  const double low = finite_or_zero(row.low);
  const double high = finite_or_zero(row.high);
  return {term.value,
          -(term.da + term.db),
          term.da * low + term.db * high,
          term.daa + 2 * term.dab + term.dbb,
          -(term.daa * low + term.dab * (low + high) + term.dbb * high),
          term.daa * low * low + 2 * term.dab * low * high + term.dbb * high * high};
}

/// log F(b) + log(1 - F(a)) + log(1 - exp(-d)), d = b - a, which the centre does not
/// move.
AftTerm logistic_term(const AftRow& row, double a, double b) {
  const LogisticSpan span = logistic_span(a, b);
  const double low = finite_or_zero(row.low);
  const double high = finite_or_zero(row.high);
  const double at_low = span.low.below * span.low.above;
  const double at_high = span.high.below * span.high.above;
  const double inverse = finite_or_zero(row.high - row.low) / span.inside;
  const double rest = inverse * (1 - span.inside);
  return {span.log_share,
          span.low.below - span.high.above,
          span.high.above * high - span.low.below * low + rest,
          -(at_low + at_high),
          at_low * low + at_high * high,
          -(at_low * low * low + at_high * high * high + rest * inverse)};
}

/// Hazards passed by both ends of an interval, F = 1 - exp(-exp w).
struct Hazards {
  double low;  ///< exp(a)
  double high; ///< exp(b)
  double between;
};
Hazards hazards(double a, double b) {
  const double low = std::exp(a);
  const double high = std::exp(b);
  return {low, high, b - a < 1e-3 ? low * std::expm1(b - a) : high - low};
}

/// -exp(a) + log(1 - exp(-D)), D the hazard between the ends. With u = D / (exp(D) - 1)
/// and m the slope of log D in the rate, the derivatives are u (1, m) and those of u
/// times what log D itself bends by.
AftTerm extreme_value_term(const AftRow& row, double a, double b) {
  const auto [ea, eb, between] = hazards(a, b);
  const double low = finite_or_zero(row.low);
  AftTerm term{-ea, ea, -ea * low, -ea, ea * low, -ea * low * low};
  if (between > 700) { // what is left at b is below every number
    return term;
  }
  const double inside = -std::expm1(-between);
  const double u = between * (1 - inside) / inside;
  const double bend = u * (u + between - 1);
  const double span = finite_or_zero(row.high - row.low) / between;
  const double m = row.high + span * ea;
  term.value += std::log(inside);
  term.c -= u;
  term.r += u * m;
  term.cc -= bend;
  term.cr += bend * m;
  term.rr -= bend * m * m + u * span * span * ea * eb;
  return term;
}

} // namespace

AftTerm interval_term(AftDistribution distribution, const AftRow& row, double centre, double rate) {
  const double a = rate * row.low - centre;
  const double b = rate * row.high - centre;
  return distribution == AftDistribution::log_normal     ? normal_term(row, a, b)
         : distribution == AftDistribution::log_logistic ? logistic_term(row, a, b)
                                                         : extreme_value_term(row, a, b);
}

double interval_value(AftDistribution distribution, double a, double b) {
  switch (distribution) {
  case AftDistribution::log_normal:
    return log_normal_share(a, b);
  case AftDistribution::log_logistic:
    return logistic_span(a, b).log_share;
  case AftDistribution::exponential:
  case AftDistribution::weibull:
    break;
  }
  const auto [ea, eb, between] = hazards(a, b);
  return -ea + std::log(-std::expm1(-between));
}

} // namespace baize::stats::detail
