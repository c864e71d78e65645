#pragma once

#include "baize/stats/designed_trial.h"

namespace baize::stats {

struct CorrectedTest {
  std::string name; ///< of the term
  double f = 0;
  double p = 1;                    ///< as if all differences between times varied alike
  double p_greenhouse_geisser = 1; ///< both degrees of freedom times epsilon
  double p_huynh_feldt = 1;
};

struct Sphericity {
  Summary summary;
  double greenhouse_geisser = 1; ///< epsilon, from 1 / (times - 1) to 1
  double huynh_feldt = 1;        ///< epsilon, no more than 1
  std::vector<CorrectedTest> tests;
};

/// Repeated measures: values of one plot at times close to each other are more
/// alike than at times far apart, so that F tests of time are too hopeful. Corrects
/// them by epsilon from the covariance S of the times' residuals:
///
///   Greenhouse-Geisser  e = tr(S)^2 / ((k - 1) tr(S^2))
///   Huynh-Feldt         ((v + 1)(k - 1) e - 2) / ((k - 1)(v - (k - 1) e))
///
/// k: times; v: residual degrees of freedom between plots. Greenhouse SW, Geisser S
/// (1959) Psychometrika 24:95-112; Huynh H, Feldt LS (1976) J. Educ. Stat. 1:69-82
/// as mended by Lecoutre B (1991) 16:371-372 for several groups.
///
/// trial: the last of its strata are the plots (or trees, greens ...), each with one
/// value at every level of `time`, a place in `treatments`; every term tested below
/// has `time` in it. Refuses what `trial_anova` refuses, "no_such_factor",
/// "not_repeated" and "lost_plots" (no value may be missing: fit a mixed model);
/// degenerate as there, and "no_residual".
Sphericity sphericity(const DesignedTrial& trial, std::size_t time,
                      const TrialOptions& options = {});

} // namespace baize::stats
