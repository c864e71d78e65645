#pragma once

#include "baize/stats/aft.h"

namespace baize::stats::detail {

/// What one time adds to the log-likelihood at w = rate y - centre, y its logarithm
/// on the standard scale, and the derivatives in centre and rate.
struct AftTerm {
  double value = 0;
  double c = 0;
  double r = 0;
  double cc = 0;
  double cr = 0;
  double rr = 0;
};

/// A row on the standard scale: exact where low == high; low may be -infinity and
/// high infinity.
struct AftRow {
  double low = 0;
  double high = 0;
};

/// The rate, and what it adds to each exact time's log density: that is one logarithm
/// for all rows.
struct AftRate {
  /// `unit`: the standard scale's unit of log time.
  AftRate(double per_unit, double unit);
  double rate;
  double log_density;
};

AftTerm aft_term(AftDistribution distribution, const AftRow& row, double centre, const AftRate& at);
double aft_value(AftDistribution distribution, const AftRow& row, double centre, const AftRate& at);

} // namespace baize::stats::detail
