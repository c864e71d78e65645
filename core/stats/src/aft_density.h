#pragma once

#include "baize/stats/aft.h"

namespace baize::stats::detail {

/// log density at w, and its first two derivatives.
struct Exact {
  double value = 0;
  double d = 0;
  double dd = 0;
};
Exact exact_term(AftDistribution distribution, double w);

/// log(F(b) - F(a)) and its derivatives; a may be -infinity, b infinity. For the
/// normal (log_normal) and logistic (log_logistic) only.
struct Between {
  double value = 0;
  double da = 0;
  double db = 0;
  double daa = 0;
  double dab = 0;
  double dbb = 0;
};
Between between_term(AftDistribution distribution, double a, double b);

/// log(F(b) - F(a)) of the normal.
double log_normal_share(double a, double b);

/// The quantile of W.
double standard_quantile(AftDistribution distribution, double share);

} // namespace baize::stats::detail
