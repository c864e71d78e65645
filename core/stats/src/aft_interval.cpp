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

/// Both ends on the scale of W. Their distance is not taken from them: the centre's
/// rounding would be in it.
struct Ends {
  double a;
  double b;
  double apart;
};
Ends ends(const AftRow& row, double centre, double rate) {
  return {rate * row.low - centre, rate * row.high - centre, rate * (row.high - row.low)};
}

/// From the derivatives in both ends.
AftTerm normal_term(const AftRow& row, const Ends& at) {
  const Between term = between_term(AftDistribution::log_normal, at.a, at.b);
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
AftTerm logistic_term(const AftRow& row, const Ends& at) {
  const LogisticSpan span = logistic_span(at.a, at.b, at.apart);
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
Hazards hazards(const Ends& at) {
  const double low = std::exp(at.a);
  const double high = std::exp(at.b);
  if (std::isinf(high)) {
    return {low, high, high};
  }
  return {low, high, at.apart < 1e-3 ? low * std::expm1(at.apart) : high - low};
}

/// D / (1 - exp(-D)) - 1, from u = D / (exp(D) - 1): above 0 however small D is.
double above_one(double u, double between) {
  return between < 0.03 ? between * (0.5 + between / 12 * (1 - between * between / 60))
                        : u + between - 1;
}

/// -exp(a) + log(1 - exp(-D)), D the hazard between the ends. With u = D / (exp(D) - 1)
/// and m the slope of log D in the rate, the derivatives are u (-1, m) and those of u
/// times what log D itself bends by.
AftTerm extreme_value_term(const AftRow& row, const Ends& at) {
  const auto [ea, eb, between] = hazards(at);
  const double low = finite_or_zero(row.low);
  AftTerm term{-ea, ea, -ea * low, -ea, ea * low, -ea * low * low};
  if (between > 37) { // what is left at b no longer counts beside what is left at a
    return term;
  }
  const double inside = -std::expm1(-between);
  const double u = between * (1 - inside) / inside;
  const double bend = u * above_one(u, between);
  const double width = finite_or_zero(row.high - row.low);
  const double by_low = width * (ea / between); // shares first: far down both are next to 0
  const double by_high = width * (eb / between);
  const double m = row.high + by_low;
  term.value += std::log(inside);
  term.c -= u;
  term.r += u * m;
  term.cc -= bend;
  term.cr += bend * m;
  term.rr -= bend * m * m + u * by_low * by_high;
  return term;
}

double extreme_value(const Ends& at) {
  const Hazards passed = hazards(at);
  return -passed.low + std::log(-std::expm1(-passed.between));
}

} // namespace

AftTerm interval_term(AftDistribution distribution, const AftRow& row, double centre, double rate) {
  const Ends at = ends(row, centre, rate);
  return distribution == AftDistribution::log_normal     ? normal_term(row, at)
         : distribution == AftDistribution::log_logistic ? logistic_term(row, at)
                                                         : extreme_value_term(row, at);
}

double interval_value(AftDistribution distribution, const AftRow& row, double centre, double rate) {
  const Ends at = ends(row, centre, rate);
  return distribution == AftDistribution::log_normal ? log_normal_share(at.a, at.b)
         : distribution == AftDistribution::log_logistic
             ? logistic_span(at.a, at.b, at.apart).log_share
             : extreme_value(at);
}

} // namespace baize::stats::detail
