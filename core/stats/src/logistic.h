#pragma once

#include <cmath>

namespace baize::stats::detail {

/// The logistic distribution at w, from one exponential; w may be infinite.
struct Logistic {
  double below;
  double above;
  double far; ///< exp(-|w|)
};
inline Logistic logistic(double w) {
  const double far = std::exp(-std::fabs(w));
  const double tail = far / (1 + far);
  const double rest = 1 / (1 + far);
  return w > 0 ? Logistic{rest, tail, far} : Logistic{tail, rest, far};
}

/// F(b) - F(a) is F(b) (1 - F(a)) (1 - exp(-d)), d = b - a above 0: nothing cancels.
struct LogisticSpan {
  Logistic low;
  Logistic high;
  double inside;    ///< 1 - exp(-d)
  double log_share; ///< log(F(b) - F(a))
};
LogisticSpan logistic_span(double a, double b, double apart);

} // namespace baize::stats::detail
