#pragma once

#include "baize/stats/log_product.h"

#include <optional>

namespace baize::stats::detail {

/// What a value told of a level: its distance from what was expected, 1 / F, and the
/// part of the variance that is left.
struct LevelNews {
  double error = 0;
  double precision = 0;
  double kept = 1; ///< 1 - gain
};

/// The level that walks at random, as known by the values so far: the Kalman filter of one
/// state, begun by its first value. What the likelihood needs is added up beside it.
class LevelFilter {
 public:
  LevelFilter(double value, double noise) : level_(value), variance_(noise) {}

  double level() const { return level_; }
  double variance() const { return variance_; }
  const LogProduct& spread() const { return spread_; } ///< of all the F
  double squares() const { return squares_; }          ///< sum of error^2 / F
  int news() const { return news_; }

  /// The level walks on by so much variance.
  void walk(double variance) { variance_ += variance; }
  /// Takes a value with that noise in; tells nothing, and changes nothing, where F is 0.
  std::optional<LevelNews> take(double value, double noise) {
    const double f = variance_ + noise;
    if (!(f > 0)) {
      return std::nullopt;
    }
    const double precision = 1 / f;
    const LevelNews told{value - level_, precision, noise * precision};
    level_ += variance_ * precision * told.error;
    variance_ *= told.kept;
    spread_.times(f);
    squares_ += told.error * told.error * precision;
    ++news_;
    return told;
  }

 private:
  double level_;
  double variance_;
  LogProduct spread_;
  double squares_ = 0;
  int news_ = 0;
};

} // namespace baize::stats::detail
