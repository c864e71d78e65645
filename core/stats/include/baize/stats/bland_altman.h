#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"

#include <cstddef>
#include <limits>
#include <span>

namespace baize::stats {

/// How the standard error of a limit of agreement is found; s is the sd of the
/// differences, m the multiplier.
enum class LimitError {
  by_multiplier, ///< s sqrt(1/n + m^2 / (2 (n - 1))): Bland and Altman (1999)
  three_over_n   ///< s sqrt(3 / n), for a multiplier near 2: Bland and Altman (1986)
};

struct BlandAltmanOptions {
  double multiplier = 1.96; ///< sds from the bias to a limit, above 0 and below 10
  LimitError limit_error = LimitError::by_multiplier;
  double confidence = 0.95; ///< above 0 and below 1
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Everything in the unit of the values. Where all differences are equal, bias
/// and sd are filled in although the summary is not usable.
struct BlandAltman {
  std::size_t n = 0;
  double bias = std::numeric_limits<double>::quiet_NaN(); ///< mean of first - second
  double sd = std::numeric_limits<double>::quiet_NaN();   ///< of the differences
  double bias_se = std::numeric_limits<double>::quiet_NaN();
  Interval bias_interval;
  Interval limits; ///< bias -+ multiplier * sd: where most differences lie
  double limit_se = std::numeric_limits<double>::quiet_NaN();
  Interval lower_limit_interval;
  Interval upper_limit_interval;
  Summary summary;
};

/// Bias and limits of agreement of two observers who judged the same items, in
/// the same order. Intervals by Student's t with n - 1 degrees of freedom. Supposes
/// differences that do not grow with the size measured, and near normal ones.
/// Refuses "lengths_differ", "too_few" (below 3), "not_finite",
/// "option_out_of_range"; degenerate "all_equal" where no difference differs.
/// Source: Bland and Altman (1986) Lancet i:307-310; (1999) Stat. Methods Med.
/// Res. 8:135-160.
BlandAltman bland_altman(std::span<const double> first, std::span<const double> second,
                         const BlandAltmanOptions& options = {});

} // namespace baize::stats
