#pragma once

#include "baize/stats/summary.h"

#include <optional>

namespace baize::stats {

/// Two treatments, or one before and after, compared by Student's t.
struct TTestPlan {
  double difference = 0; ///< to be found; not 0
  double sd = 1;         ///< of one value, paired: of one pair's difference; above 0
  bool paired = false;   ///< n counts pairs; otherwise values in each of two groups
  bool two_sided = true;
  double alpha = 0.05; ///< above 0 and below 1
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Several treatments compared by one-way analysis of variance; n in each group.
struct AnovaPlan {
  int groups = 2;    ///< 2 to 200
  double effect = 0; ///< standard deviation of the means (divisor: groups) over that of the
                     ///< values within a group (Cohen's f); above 0
  double alpha = 0.05;
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Two shares compared by the normal approximation; n in each group.
struct SharesPlan {
  double first = 0;  ///< 0 to 1
  double second = 0; ///< 0 to 1, not the same
  bool two_sided = true;
  double alpha = 0.05;
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct Power {
  Summary summary;
  double power = 0; ///< chance that the test finds the difference; the wrong way round
                    ///< counts too where two-sided
};

/// By the noncentral t, the noncentral F and the normal distribution. n: above 1 (2 for
/// pairs and more), need not be whole. Cohen J (1988) Statistical Power Analysis for the
/// Behavioral Sciences, 2nd ed. Refuses "option_out_of_range", "n_out_of_range" (2 to 1e7).
Power power_of(const TTestPlan& plan, double n);
Power power_of(const AnovaPlan& plan, double n);
Power power_of(const SharesPlan& plan, double n);

struct SampleSize {
  Summary summary;
  double exact = 0; ///< where the power is just reached; 2 where 2 are more than enough
  int n = 0;        ///< the next whole number
  double power = 0; ///< at n
};

/// The least n with the wanted power, above alpha and below 1. Refuses
/// "option_out_of_range"; degenerate "out_of_reach" where 1e7 do not suffice.
SampleSize sample_size(const TTestPlan& plan, double power);
SampleSize sample_size(const AnovaPlan& plan, double power);
SampleSize sample_size(const SharesPlan& plan, double power);

} // namespace baize::stats
