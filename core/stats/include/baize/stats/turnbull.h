#pragma once

#include "baize/stats/censored_time.h"
#include "baize/stats/summary.h"

#include <optional>
#include <vector>

namespace baize::stats {

struct TurnbullOptions {
  int max_iterations = 5000; ///< 1 to 1000000
  double tolerance = 1e-8;   ///< of the log-likelihood's gap to the optimum; above 0, below 1
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// A set that carries mass: (left, right], or the one time where left = right.
/// How the mass lies within it no data can tell.
struct SupportMass {
  double left = 0;
  double right = 0; ///< infinite: after the last look
  double mass = 0;  ///< above 0
};

struct Turnbull {
  Summary summary;
  std::vector<SupportMass> support; ///< in order of time; the masses add up to 1
  double log_likelihood = 0;
  /// No distribution has a log-likelihood greater than this one's by more than
  /// that: the greatest d log L / d mass, less the count of times.
  double optimality_gap = 0;
  int times = 0;
};

/// Nonparametric maximum likelihood estimate of a distribution from
/// interval-censored times. Support: Turnbull BW (1976) J. R. Stat. Soc. B
/// 38:290-295. The masses come from self-consistency steps first, then from an
/// active-set Newton method that ends only when the optimality conditions hold
/// (Gentleman R, Geyer CJ (1994) Biometrika 81:618-623). No standard error goes
/// with the masses: their errors are not normal in large samples; resample works.
/// Refuses "too_few" (1 needed) and "time_out_of_range"; degenerate
/// "all_censored" where nothing ended.
Turnbull turnbull(const std::vector<CensoredTime>& times, const TurnbullOptions& options = {});

struct TimeRange {
  double low = 0;
  double high = 0; ///< infinite where not reached by the last look
};
/// Where the `share` quantile lies (0.5: the median): the support set in which
/// the distribution reaches `share`. Absent unless usable and 0 < share < 1.
std::optional<TimeRange> turnbull_quantile(const Turnbull& estimate, double share);

struct SurvivalRange {
  double low = 0;
  double high = 1;
};
/// Least and greatest share not yet ended just after `time`; they differ within
/// a support set. Absent unless usable and `time` is 0 or more.
std::optional<SurvivalRange> turnbull_survival(const Turnbull& estimate, double time);

} // namespace baize::stats
