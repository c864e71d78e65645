#include "baize/stats/aft_clusters.h"

#include "aft_fitting.h"
#include "cluster_places.h"

#include <string>

namespace baize::stats {

AftFit fit_aft_clustered(const std::vector<AftObservation>& observations,
                         const std::vector<int>& clusters, const AftOptions& options) {
  detail::AftFitting fitting = detail::begin_aft(observations, options);
  AftFit& fit = fitting.fit;
  if (!fit.summary.usable) {
    return fit;
  }
  const auto places = detail::cluster_places(clusters, observations.size());
  if (!places) {
    fit.summary = refused(places.error());
    return fit;
  }
  const detail::AftLikelihood likelihood(fitting.times, fitting.design.columns,
                                         options.distribution);
  const Eigen::Index columns = fitting.design.columns.cols();
  if (static_cast<Eigen::Index>(places->size()) <= columns) {
    fit.summary = degenerate({"too_few_clusters", "clusters", std::to_string(places->size()),
                              "more than the coefficients, " + std::to_string(columns), ""});
    return fit;
  }
  Eigen::VectorXd at(likelihood.size());
  at << fitting.optimum.ratio, fitting.optimum.rate;
  const Eigen::MatrixXd scores = likelihood.scores(at);
  Eigen::MatrixXd spread = Eigen::MatrixXd::Zero(scores.cols(), scores.cols());
  for (const detail::ClusterPlaces& cluster : *places) {
    Eigen::VectorXd sum = Eigen::VectorXd::Zero(scores.cols());
    for (const std::size_t i : cluster.places) {
      sum += scores.row(static_cast<Eigen::Index>(i)).transpose();
    }
    spread += sum * sum.transpose();
  }
  detail::Optimum robust = fitting.optimum;
  robust.covariance = fitting.optimum.covariance * spread * fitting.optimum.covariance;
  detail::translate(fitting, robust, fit);
  detail::compare_with_constant(fitting, options, fit);
  detail::check_finite(fit);
  return fit;
}

} // namespace baize::stats
