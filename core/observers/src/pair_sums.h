#pragma once

#include <optional>

namespace baize::observers {

/// Sums over pairs of scores, so that a coefficient without one session costs a
/// subtraction and not another pass. Scores lie from 1 to 10, so nothing cancels.
struct PairSums {
  double n = 0;
  double x = 0;
  double y = 0;
  double xx = 0;
  double yy = 0;
  double xy = 0;
  void add(double first, double second);
  PairSums without(const PairSums& part) const;
};

/// ICC(2,1) of two observers, as stats::intraclass_correlation gives it; absent
/// where items do not differ on the mean.
std::optional<double> icc_random_single(const PairSums& sums);
/// Lin's concordance, as stats::concordance gives it; absent where one never changes.
std::optional<double> concordance_of(const PairSums& sums);

} // namespace baize::observers
