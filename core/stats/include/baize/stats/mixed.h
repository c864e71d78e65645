#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::stats {

/// Effects that differ from group to group, drawn from a normal distribution of
/// mean 0: of the constant, of slopes on columns, or of both.
struct RandomTerm {
  std::string name;       ///< for messages: "green"
  std::vector<int> group; ///< one a row; equal numbers are one group
  bool constant = true;
  std::vector<std::vector<double>> slopes = {}; ///< columns, one number a row; may be none
  bool correlated = true; ///< whether constant and slopes of a group go together
};

/// y = constant + fixed columns + random terms + error. Groups of two terms may be
/// crossed or nested; a nested group needs a number of its own (plot 1 of block 2
/// is another group than plot 1 of block 1).
struct MixedModel {
  std::vector<double> y;
  std::vector<std::vector<double>> fixed; ///< columns, one number a row
  bool constant = true;                   ///< the first coefficient
  std::vector<RandomTerm> random;         ///< at least one
};

struct MixedOptions {
  bool restricted = true;    ///< REML; false: maximum likelihood, needed to compare fixed effects
  double confidence = 0.95;  ///< of the coefficients' intervals, above 0 and below 1
  bool group_effects = true; ///< whether to work out each group's effect
  int max_iterations = 200;  ///< 1 to 10000, of the search
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct MixedCoefficient {
  double value = 0;
  double standard_error = 0;
  double df = 0; ///< Satterthwaite's, not necessarily whole
  double t = 0;
  double p = 1; ///< two-sided
  Interval interval;
};

/// One group's effects, in the order constant, slopes: best linear unbiased
/// predictions, with their standard deviations given the data and the estimates.
struct GroupEffect {
  int group = 0;
  std::vector<double> value;
  std::vector<double> sd;
};

struct RandomTermFit {
  std::string name;
  std::vector<double> sd; ///< of constant and slopes, in this order
  /// 1 on the diagonal; 0 with an effect whose standard deviation is 0.
  std::vector<std::vector<double>> correlation;
  std::vector<GroupEffect> groups; ///< by number; empty where not asked for
};

struct MixedFit {
  Summary summary; ///< boundary: a variance is 0, or a correlation -1 or 1
  bool restricted = true;
  int observations = 0;
  int parameters = 0; ///< coefficients, variances and correlations
  std::vector<MixedCoefficient> coefficients;
  std::vector<std::vector<double>> covariance; ///< of the coefficients
  std::vector<RandomTermFit> random;           ///< as in the model
  double residual_sd = 0;
  double log_likelihood = 0; ///< restricted where asked for
  double criterion = 0;      ///< -2 log_likelihood
  /// What Satterthwaite's degrees of freedom of a contrast need: the covariance of
  /// the variance parameters, and the change of `covariance` with each of them.
  std::vector<std::vector<double>> parameter_covariance;
  std::vector<std::vector<std::vector<double>>> covariance_slopes;
};

/// Linear mixed model by restricted or full maximum likelihood. The likelihood is
/// profiled over coefficients and residual variance; the rest is a search over the
/// Cholesky factor of each term's covariance relative to the residual variance,
/// with the largest term eliminated block by block. Bates D, Maechler M, Bolker B,
/// Walker S (2015) J. Stat. Softw. 67(1). Degrees of freedom: Satterthwaite FE
/// (1946) Biometrics Bull. 2:110-114, as Giesbrecht FG, Burns JC (1985) Biometrics
/// 41:477-486 apply it.
/// The group effects' deviations leave out the uncertainty of the coefficients
/// and variances. Agreement with an independent program: 1e-6 relative or better.
/// Refuses "option_out_of_range", "lengths_differ", "not_finite", "too_few" (rows,
/// terms, effects of a term), "one_group", "group_is_row" (as many random effects
/// as rows: they cannot be told from the error). Degenerate "singular_design" (a
/// column is a sum of those before it, or a slope nothing but 0), "same_term" (two
/// terms alike), "no_residual" (the columns or the groups leave no error).
MixedFit fit_mixed(const MixedModel& model, const MixedOptions& options = {});

} // namespace baize::stats
