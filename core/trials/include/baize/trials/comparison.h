#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/trial_means.h"
#include "baize/trials/plan.h"

namespace baize::trials {

/// A treatment (or pair of treatments) with its mean.
struct Mean {
  std::string name; ///< "coring" or "coring / sand"
  double mean = 0;
  int plots = 0; ///< that have a value
  /// Means that share a letter cannot be told apart by Tukey's method.
  std::string letters;
};

/// Two means beside each other.
struct Pair {
  std::string first;
  std::string second;
  double difference = 0; ///< first less second
  double standard_error = 0;
  double df = 0;
  stats::Interval alone; ///< as if this were the only comparison (Fisher's LSD)
  double p_alone = 1;
  stats::Interval among_all; ///< simultaneous over all pairs (Tukey, Kramer)
  double p_among_all = 1;
};

/// One treatment against the control; simultaneous over all of them (Dunnett).
struct AgainstControl {
  std::string name;
  double difference = 0; ///< treatment less control
  stats::Interval interval;
  double p = 1;
};

/// All that is said of one table of means.
struct Comparison {
  std::string of; ///< "treatment", "second treatment" or "both together"
  double f = 0;
  int df = 0;
  int error_df = 0;
  double p = 1; ///< of the term: all alike, or (both together) no interaction
  std::vector<Mean> means;
  std::vector<Pair> pairs;
  double lsd = 0; ///< the largest of the pairs' least significant differences
  std::vector<AgainstControl> against_control;
};

/// The analysis of one value for each plot.
struct ValueAnalysis {
  stats::Summary summary;
  std::vector<stats::TrialStratum> strata;
  std::vector<double> values; ///< by plot; lost plots filled
  int lost = 0;
  double mean = 0;
  std::optional<double> cv; ///< of the plots, a fraction
  std::vector<Comparison> comparisons;
};

/// Analysis of variance in the strata of the plan's layout, with tables of means
/// and their comparisons. values: one for each plot of the plan, absent where it
/// was lost. A plan of a split plot gives three tables, each with its own error.
/// Methods and sources: stats/designed_trial.h, trial_means.h, mean_comparisons.h,
/// dunnett.h. Refuses and is degenerate as
/// stats::trial_anova; the plan has no problem. confidence: above 0, below 1.
ValueAnalysis analyse_values(const Plan& plan, const std::vector<std::optional<double>>& values,
                             double confidence = 0.95);

} // namespace baize::trials
