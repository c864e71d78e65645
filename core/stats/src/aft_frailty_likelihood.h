#pragma once

#include "aft_likelihood.h"
#include "cluster_places.h"
#include "gauss_hermite.h"

namespace baize::stats::detail {

/// The marginal log-likelihood of ratios, rate and log(spread), where
/// w = rate y - x . ratio - spread u and u is standard normal in each cluster.
class AftFrailtyLikelihood {
 public:
  /// Keeps references to all.
  AftFrailtyLikelihood(const StandardTimes& times, const Eigen::MatrixXd& design,
                       AftDistribution distribution, const std::vector<ClusterPlaces>& clusters,
                       const std::vector<QuadratureNode>& nodes);

  bool fixed_rate() const { return distribution_ == AftDistribution::exponential; }
  /// With the rate, also where that is fixed.
  Eigen::Index size() const { return design_.cols() + 2; }
  double value(const Eigen::VectorXd& at) const;
  /// Without the rate where that is fixed.
  AftSlopes slopes(const Eigen::VectorXd& at) const;
  /// Slope in spread squared at 0, where the likelihood has no other: not above 0,
  /// the likelihood falls from there on. `plain`: ratios and rate.
  double slope_at_zero(const Eigen::VectorXd& plain) const;

  /// Mean and deviation of u given a cluster's data.
  struct Effect {
    double mean = 0;
    double deviation = 0;
  };
  Effect effect(const Eigen::VectorXd& at, const ClusterPlaces& cluster) const;

 private:
  struct Here {
    const Eigen::VectorXd& centre; ///< of each row, without u
    AftRate rate;
    double spread;
  };
  struct Peak {
    double u = 0;
    double width = 1; ///< 1 / sqrt of minus the second derivative
  };
  struct Weighed {
    std::vector<double> u;
    std::vector<double> weight; ///< of each node, adding up to 1
    double log_integral = 0;
  };
  /// Of ratios, rate and, last, the log spread; keeps a reference to `centre`.
  Here here_at(const Eigen::VectorXd& centre, const Eigen::VectorXd& at) const;
  AftRow row(std::size_t i) const;
  double joint(const Here& here, const ClusterPlaces& cluster, double u) const;
  Peak peak(const Here& here, const ClusterPlaces& cluster) const;
  Weighed weigh(const Here& here, const ClusterPlaces& cluster) const;
  void add_node(const Here& here, const ClusterPlaces& cluster, double u, AftSlopes& sum) const;
  void add_cluster(const Here& here, const ClusterPlaces& cluster, AftSlopes& out) const;

  const StandardTimes& times_;
  const Eigen::MatrixXd& design_;
  AftDistribution distribution_;
  const std::vector<ClusterPlaces>& clusters_;
  const std::vector<QuadratureNode>& nodes_;
};

} // namespace baize::stats::detail
