#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"
#include "baize/trials/values.h"

#include <string>
#include <vector>

namespace baize::trials {

/// How much likelier higher scores are under one treatment than under another.
struct OddsRatio {
  std::string first;
  std::string second;
  double odds = 1; ///< of a score above any given one: first's times second's
  stats::Interval interval;
  double p = 1; ///< two-sided, of odds alike
};

/// Scores as ranks: nothing is assumed of how far 7 lies from 8.
struct Ordinal {
  stats::Summary summary;
  std::vector<OddsRatio> pairs; ///< all pairs of treatments
  int plots = 0;                ///< with a score
  double df = 0;                ///< of the t distribution that the intervals use
};

/// Cumulative logit regression of each plot's mean score over the days, to half a
/// point, on treatment and block (stats/ordinal.h): one row a plot, since treatments
/// are compared between plots. Plots are few, so intervals take Student's t with plots
/// less treatments less blocks plus 1 degrees of freedom, as time_back does: a choice
/// of ours, more careful than the normal. `values`: of score, visits after the treatment.
/// Refuses "not_scores" (another quantity), "one_treatment_only" (layouts with a
/// second treatment, whose plots are not alike in error), "too_few" (plots); else
/// as stats::fit_ordinal.
Ordinal analyse_ordinal(const Plan& plan, const Values& values, double confidence = 0.95);

} // namespace baize::trials
