#include "baize/stats/aft_tests.h"

#include "aft_fitting.h"
#include "baize/stats/distributions.h"
#include "checks.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <string>

namespace baize::stats {
namespace {

using units::Problem;

struct Setup {
  std::vector<AftObservation> reduced;
  std::optional<Problem> problem;
};

/// The observations without the tested covariates.
Setup setup(const std::vector<AftObservation>& observations, int tested) {
  Setup out;
  const std::size_t covariates = observations.empty() ? 0 : observations.front().covariates.size();
  if (tested < 1 || static_cast<std::size_t>(tested) > covariates) {
    out.problem = Problem{"tested_out_of_range", "tested", std::to_string(tested),
                          "from 1 to the count of covariates, " + std::to_string(covariates), ""};
    return out;
  }
  out.problem = detail::bad_observations(observations);
  if (!out.problem) {
    out.reduced = observations;
    for (AftObservation& one : out.reduced) {
      one.covariates.resize(covariates - static_cast<std::size_t>(tested));
    }
  }
  return out;
}

AftTest of(double statistic, int df) {
  AftTest test{done_if_finite({statistic}), std::max(0.0, statistic), df, 1};
  test.p = test.summary.usable ? chi_squared_upper(test.statistic, df) : 1;
  return test;
}

} // namespace

AftTest aft_score_test(const std::vector<AftObservation>& observations, int tested,
                       const AftOptions& options) {
  const Setup made = setup(observations, tested);
  if (made.problem) {
    return {refused(*made.problem)};
  }
  const detail::AftFitting null = detail::begin_aft(made.reduced, options);
  if (!null.fit.summary.usable) {
    return {null.fit.summary};
  }
  const detail::Design full = detail::standard_design(observations);
  if (auto problem = detail::singular(full)) {
    return {degenerate(*problem)};
  }
  const detail::AftLikelihood likelihood(null.times, full.columns, options.distribution);
  Eigen::VectorXd at = Eigen::VectorXd::Zero(likelihood.size());
  at.head(null.optimum.ratio.size()) = null.optimum.ratio;
  at(at.size() - 1) = null.optimum.rate;
  const detail::AftSlopes slopes = likelihood.slopes(at);
  const Eigen::LDLT<Eigen::MatrixXd> factor(slopes.information);
  return of(slopes.gradient.dot(factor.solve(slopes.gradient)), tested);
}

AftTest aft_likelihood_ratio_test(const std::vector<AftObservation>& observations, int tested,
                                  const AftOptions& options) {
  const Setup made = setup(observations, tested);
  if (made.problem) {
    return {refused(*made.problem)};
  }
  const detail::AftFitting null = detail::begin_aft(made.reduced, options);
  const detail::AftFitting full = detail::begin_aft(observations, options);
  for (const detail::AftFitting* fitting : {&null, &full}) {
    if (!fitting->fit.summary.usable) {
      return {fitting->fit.summary};
    }
  }
  return of(2 * (full.fit.log_likelihood - null.fit.log_likelihood), tested);
}

} // namespace baize::stats
