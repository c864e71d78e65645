#pragma once

#include <cmath>
#include <numbers>

namespace baize::stats {

/// The logarithm of a long product of numbers above 0, for one logarithm in all: the
/// product of their mantissas, and the sum of their powers of two beside it.
class LogProduct {
 public:
  /// `factor`: finite, above 0.
  void times(double factor) {
    int power = 0;
    mantissa_ *= std::frexp(factor, &power);
    powers_ += power;
    if (mantissa_ < kSmall) {
      mantissa_ = std::frexp(mantissa_, &power);
      powers_ += power;
    }
  }
  double log() const { return std::log(mantissa_) + powers_ * std::numbers::ln2; }

 private:
  static constexpr double kSmall = 1e-290;
  double mantissa_ = 1;
  double powers_ = 0;
};

} // namespace baize::stats
