#pragma once

#include "baize/season/evaluate.h"

#include <string>
#include <vector>

namespace baize::season {

/// A number with its standard error and 95 % interval.
struct Estimate {
  double value = 0;
  double standard_error = 0;
  double low = 0;
  double high = 0;
};

/// One possible world: parameters and effects drawn together from what the
/// records leave open.
struct Draw {
  Parameters parameters;
  Eigen::VectorXd shared;
  std::vector<Eigen::VectorXd> own;      ///< by green, in the order of GreenPosterior
  std::vector<Eigen::VectorXd> log_rate; ///< by green: each loss's rate about its method's
  /// Of one loss, per growth-day (or calendar day).
  double rate(std::size_t green, std::size_t loss, std::size_t method) const;
};

struct MethodEstimate {
  std::string method;
  int losses = 0;              ///< works at greens
  int work_days = 0;           ///< different days they were done on
  Estimate depth;              ///< mean of the method, points
  Estimate rate;               ///< per growth-day or calendar day
  Estimate half_life;          ///< growth-days or calendar days until half of a loss is gone
  bool rate_determined = true; ///< false: the records say little more than was believed before
};

struct ObserverEstimate {
  std::string observer;
  int looks = 0;
  Estimate above; ///< points above the mean of all observers
};

/// The season model of a club, fitted at once: greens are independent given what
/// they share.
struct SeasonFit {
  stats::Summary summary;
  Model model;
  Options options;
  Parameters parameters;     ///< at the highest of the penalised likelihood
  Posterior posterior;       ///< effects there
  double log_likelihood = 0; ///< of the records there, without the beliefs
  double penalised = 0;      ///< with the beliefs
  Estimate level_walk;       ///< sd of a day's step, points
  Estimate visit_sd;
  Estimate line_sd;
  Estimate depth_spread; ///< share
  Estimate play;         ///< points of a whole day's play
  std::vector<MethodEstimate> methods;
  std::vector<ObserverEstimate> observers;
  std::vector<Draw> draws;
  std::vector<std::string> notes; ///< the model's, and what the records cannot tell
};

/// Fits by the highest penalised likelihood: linear effects integrated out exactly,
/// the others found by BOBYQA (NLopt) and Newton steps. Their uncertainty is the
/// normal distribution with the curvature there (Laplace), on the log scale; each
/// draw takes parameters from it and effects given them, so that intervals hold
/// both. A loss's own rate differs from its method's; to first order that is one more
/// linear effect a loss, which is put in at the highest point only: draws take it and
/// what it does to the other effects from there. Powell MJD (2009) The BOBYQA algorithm for bound
/// constrained optimization without derivatives. Univ. Cambridge DAMTP 2009/NA06.
///
/// Refuses as read_model; degenerate "likelihood_not_finite". `watch` may stop it.
SeasonFit fit_season(Model model, const Options& options = {}, const stats::Watch& watch = {});

/// Mean, standard deviation and the 2.5 and 97.5 % points of draws, at places p (n + 1).
Estimate estimate_of(std::vector<double> draws);

} // namespace baize::season
