#include "aft_term.h"

#include "aft_density.h"
#include "aft_interval.h"

#include <cmath>

namespace baize::stats::detail {
namespace {

/// A time between 0 and infinity says nothing.
bool informs(const AftRow& row) {
  return std::isfinite(row.low) || std::isfinite(row.high);
}

} // namespace

AftRate::AftRate(double per_unit, double unit)
    : rate(per_unit), log_density(std::log(per_unit / unit)) {}

double aft_value(AftDistribution distribution, const AftRow& row, double centre,
                 const AftRate& at) {
  if (row.low == row.high) {
    return exact_term(distribution, at.rate * row.low - centre).value + at.log_density;
  }
  return informs(row) ? interval_value(distribution, row, centre, at.rate) : 0;
}

AftTerm aft_term(AftDistribution distribution, const AftRow& row, double centre,
                 const AftRate& at) {
  if (row.low == row.high) {
    const Exact term = exact_term(distribution, at.rate * row.low - centre);
    return {term.value + at.log_density,
            -term.d,
            term.d * row.low + 1 / at.rate,
            term.dd,
            -term.dd * row.low,
            term.dd * row.low * row.low - 1 / (at.rate * at.rate)};
  }
  return informs(row) ? interval_term(distribution, row, centre, at.rate) : AftTerm{};
}

} // namespace baize::stats::detail
