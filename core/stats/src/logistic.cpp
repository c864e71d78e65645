#include "logistic.h"

namespace baize::stats::detail {
namespace {

/// 1 - exp(-apart), from the exponentials at hand unless they cancel.
double inside_of(double a, double b, double apart, double far_a, double far_b) {
  const double ratio = a > 0 ? far_b / far_a : b > 0 ? far_a * far_b : far_a / far_b;
  return ratio < 0.5 ? 1 - ratio : -std::expm1(-apart); // 0 / 0 in the farthest tails as well
}

double log_below(double w) {
  return w > 0 ? -std::log1p(std::exp(-w)) : w - std::log1p(std::exp(w));
}

} // namespace

LogisticSpan logistic_span(double a, double b, double apart) {
  LogisticSpan span{logistic(a), logistic(b), 1, 0};
  span.inside = inside_of(a, b, apart, span.low.far, span.high.far);
  const double share = span.high.below * span.low.above * span.inside;
  span.log_share =
      share > 1e-290 ? std::log(share) : log_below(b) + log_below(-a) + std::log(span.inside);
  return span;
}

} // namespace baize::stats::detail
