#include "aft_term.h"

#include "aft_density.h"

#include <cmath>

namespace baize::stats::detail {
namespace {

/// A time between 0 and infinity says nothing.
bool informs(const AftRow& row) {
  return std::isfinite(row.low) || std::isfinite(row.high);
}

/// At an infinite end all derivatives are 0; infinity must not meet them.
double finite_or_zero(double y) {
  return std::isfinite(y) ? y : 0;
}

} // namespace

double aft_value(AftDistribution distribution, const AftRow& row, double centre, double rate) {
  const double a = rate * row.low - centre;
  if (row.low == row.high) {
    return exact_term(distribution, a).value + std::log(rate / row.unit);
  }
  return informs(row) ? between_term(distribution, a, rate * row.high - centre).value : 0;
}

AftTerm aft_term(AftDistribution distribution, const AftRow& row, double centre, double rate) {
  const double a = rate * row.low - centre;
  if (row.low == row.high) {
    const Exact term = exact_term(distribution, a);
    return {term.value + std::log(rate / row.unit),
            -term.d,
            term.d * row.low + 1 / rate,
            term.dd,
            -term.dd * row.low,
            term.dd * row.low * row.low - 1 / (rate * rate)};
  }
  if (!informs(row)) {
    return {};
  }
  const Between term = between_term(distribution, a, rate * row.high - centre);
  const double low = finite_or_zero(row.low);
  const double high = finite_or_zero(row.high);
  return {term.value,
          -(term.da + term.db),
          term.da * low + term.db * high,
          term.daa + 2 * term.dab + term.dbb,
          -(term.daa * low + term.dab * (low + high) + term.dbb * high),
          term.daa * low * low + 2 * term.dab * low * high + term.dbb * high * high};
}

} // namespace baize::stats::detail
