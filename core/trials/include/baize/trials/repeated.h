#pragma once

#include "baize/stats/summary.h"
#include "baize/trials/values.h"

namespace baize::trials {

/// A test over all visits.
struct RepeatedTest {
  std::string of; ///< "day", "treatment and day", ...
  double f = 0;
  int df = 0;
  int error_df = 0;
  double p = 1;           ///< as if all days were equally alike
  double p_corrected = 1; ///< Greenhouse-Geisser; the lower bound where plots were lost
};

struct Repeated {
  stats::Summary summary;
  std::vector<RepeatedTest> tests;
  double epsilon = 1;       ///< by which degrees of freedom were multiplied
  bool lower_bound = false; ///< epsilon is 1 / (days - 1), the most careful one
  int lost = 0;             ///< plots of single days without a value
};

/// Do treatments run differently through time? The days are a factor within plots;
/// tests that hold days are corrected by Greenhouse and Geisser's epsilon
/// (stats/sphericity.h), for neighbouring days are more alike than distant ones.
/// Where values are missing epsilon cannot be estimated by it and its lower bound is
/// taken (Geisser S, Greenhouse SW (1958) Ann. Math. Stat. 29:885-891).
/// Refuses "too_few" below two days, and as stats::trial_anova.
Repeated analyse_repeated(const Plan& plan, const Values& values);

} // namespace baize::trials
