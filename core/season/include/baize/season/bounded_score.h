#pragma once

namespace baize::season {

inline constexpr double kTop = 10;
inline constexpr double kBottom = 1;
inline constexpr double kInsideTop = 9.5;    ///< what lies above is scored 10
inline constexpr double kInsideBottom = 1.5; ///< what lies below is scored 1

/// Standard deviation of rolls before they are written down in whole points, from
/// that of the scores: rounding adds 1/12 to the variance (Sheppard 1898). At least 0.1.
double unrounded(double sd);

/// Mean of the whole scores 1 to 10 that rolls get which scatter normally about
/// `level` with standard deviation `sd` (points, above 0): 1 + sum over k = 1..9 of
/// P(score > k) = 1 + sum Phi((level - k - 1/2) / sd). At most 0.001 from the level
/// between 2.5 and 8.5 for an sd of 0.65, and less than it near 10. Rises with
/// `level`, from 1 to 10.
double bounded_score(double level, double sd);

/// The level whose bounded score is `score`, to 1e-9; above 10 and below 1 the
/// level as far out as rolls can tell, 10 + 4 sd or 1 - 4 sd.
double level_of_score(double score, double sd);

} // namespace baize::season
