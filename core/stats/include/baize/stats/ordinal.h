#pragma once

#include "baize/stats/summary.h"

#include <optional>
#include <vector>

namespace baize::stats {

/// logit: odds; probit: a normal scale behind the categories.
enum class OrdinalLink { logit, probit };

/// Ordered categories, such as scores, and what may explain them.
struct OrdinalData {
  std::vector<int> category;                   ///< one a row; a greater number is a higher category
  std::vector<std::vector<double>> covariates; ///< columns, one number a row; no constant
  std::vector<double> weight = {};             ///< 0 or more, one a row; empty: all 1
  std::vector<int> scale = {};                 ///< all categories there are; empty: those used
};

struct OrdinalOptions {
  OrdinalLink link = OrdinalLink::logit;
  int max_iterations = 100; ///< 1 to 10000
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct OrdinalThreshold {
  int below = 0; ///< between this category and the next one used
  int above = 0;
  double value = 0;
  double standard_error = 0;
};

struct OrdinalCoefficient {
  double value = 0; ///< above 0: more of the covariate goes with higher categories
  double standard_error = 0;
  double p = 1; ///< two-sided, of value / standard error as normal
};

struct OrdinalFit {
  Summary summary;
  OrdinalLink link = OrdinalLink::logit;
  std::vector<OrdinalThreshold> thresholds; ///< ascending
  std::vector<OrdinalCoefficient> coefficients;
  /// Of the thresholds, then the coefficients.
  std::vector<std::vector<double>> covariance;
  std::vector<int> used;   ///< categories, ascending
  std::vector<int> unused; ///< of the scale: nobody gave them, so no threshold can be told
  double log_likelihood = 0;
  double deviance = 0;            ///< -2 log_likelihood
  double log_likelihood_null = 0; ///< with thresholds only
  double likelihood_ratio = 0;    ///< twice the difference, on as many degrees as covariates
  double likelihood_ratio_p = 1;
  double observations = 0; ///< the weights' sum
};

/// P(category <= j) = F(threshold_j - covariates . coefficients), F logistic or
/// normal: the cumulative model of McCullagh P (1980) J. R. Stat. Soc. B
/// 42:109-142, by Newton steps on its concave log-likelihood; errors from the
/// second derivatives. The summary's message names unused categories.
/// Refuses "too_few" (rows), "lengths_differ", "not_finite", "below_zero" (a
/// weight), "not_in_scale", "option_out_of_range". Degenerate "one_category" (all
/// rows alike), "singular_design" (a covariate is constant or a sum of others),
/// "separated" (a covariate parts higher from lower categories, so that its best
/// coefficient is infinite).
OrdinalFit fit_ordinal(const OrdinalData& data, const OrdinalOptions& options = {});

/// Probability of each category used, in order. Empty unless the fit is usable and
/// there is one number for each coefficient.
std::vector<double> ordinal_probabilities(const OrdinalFit& fit,
                                          const std::vector<double>& covariates);

} // namespace baize::stats
