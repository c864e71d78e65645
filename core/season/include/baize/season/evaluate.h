#pragma once

#include "baize/season/model.h"

#include <Eigen/Core>

#include <vector>

namespace baize::season {

/// What is not linear in the model; given these everything else has a closed form.
struct Parameters {
  double level_walk = 0.03;          ///< sd of one day's step of the undisturbed level, points
  double visit_sd = 0.15;            ///< sd of what all rolls of a visit share, points
  double line_sd = 0.1;              ///< sd of a line and direction about its green, points
  double depth_spread = 0.25;        ///< sd of one loss's depth as a share of `typical_depth`
  std::vector<double> rate;          ///< by method, per growth-day (or calendar day), above 0
  std::vector<double> typical_depth; ///< by method, points, above 0: scales depth_spread only
};

/// Linear effects of one green in the order of its columns: depth of each loss,
/// effect of each line, level at the first look.
struct GreenPosterior {
  Eigen::MatrixXd precision_root; ///< lower Cholesky factor of the precision given what is shared
  Eigen::VectorXd base;           ///< mean where what is shared is 0
  Eigen::MatrixXd slope;          ///< change of that mean with what is shared
};

/// Effects that greens share, in the order: observers (as contrasts), play, mean
/// depth of each method.
struct Posterior {
  double log_likelihood = 0; ///< of the records, all linear effects integrated out
  bool usable = false;       ///< false: a matrix was singular or a number not finite
  Eigen::VectorXd shared;
  Eigen::MatrixXd shared_covariance;
  std::vector<GreenPosterior> greens;
};

/// The likelihood of the records given the parameters, and all linear effects.
///
/// A run's mean is  u(day) - sum of depth exp(-rate G) + observer + play x share
/// of the day's play + line + visit + noise/sqrt(rolls);  u walks at random from
/// a start of which nothing is known (flat, exactly). Within a visit only lines
/// and losses on halves differ; the rest is a scalar random walk with noise at
/// the visits' means, so that one pass of the augmented Kalman filter over a
/// green's visits whitens all columns at once (de Jong P (1991) Ann. Stat.
/// 19:1073-1083; Durbin J, Koopman SJ (2012) Time Series Analysis by State Space
/// Methods, 2nd ed., 6.2.3), and the greens' normal equations are added up over
/// what they share. The log-likelihood counts each green's start as flat, as
/// stats::kalman_filter does: log 2 pi for all runs but one a green.
/// `with_posterior` false leaves the effects empty.
Posterior evaluate(const Model& model, const Priors& priors, const Parameters& parameters,
                   bool with_posterior = true);

/// Observers above the mean of all observers, from the shared effects.
Eigen::MatrixXd observer_contrasts(std::size_t observers);

/// Standardised one-step errors of the visits' means of one green, linear effects
/// at their estimates; the first look has none.
std::vector<double> innovations(const Model& model, std::size_t green, const Parameters& parameters,
                                const Posterior& posterior);

} // namespace baize::season
