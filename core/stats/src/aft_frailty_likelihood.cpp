#include "aft_frailty_likelihood.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace baize::stats::detail {

AftFrailtyLikelihood::AftFrailtyLikelihood(const StandardTimes& times,
                                           const Eigen::MatrixXd& design,
                                           AftDistribution distribution,
                                           const std::vector<ClusterPlaces>& clusters,
                                           const std::vector<QuadratureNode>& nodes)
    : times_(times), design_(design), distribution_(distribution), clusters_(clusters),
      nodes_(nodes) {}

AftFrailtyLikelihood::Here AftFrailtyLikelihood::here_at(const Eigen::VectorXd& centre,
                                                         const Eigen::VectorXd& at) const {
  const Eigen::Index columns = design_.cols();
  return {centre, AftRate(at(columns), times_.unit), std::exp(at(columns + 1))};
}

AftRow AftFrailtyLikelihood::row(std::size_t i) const {
  return {times_.low[i], times_.high[i]};
}

/// Log of the cluster's density times that of u.
double AftFrailtyLikelihood::joint(const Here& here, const ClusterPlaces& cluster, double u) const {
  double sum = -0.5 * (u * u + std::log(2 * std::numbers::pi));
  for (const std::size_t i : cluster.places) {
    const double centre = here.centre(static_cast<Eigen::Index>(i)) + here.spread * u;
    sum += aft_value(distribution_, row(i), centre, here.rate);
  }
  return sum;
}

/// The joint density is log-concave in u: one peak, found by halved Newton steps.
AftFrailtyLikelihood::Peak AftFrailtyLikelihood::peak(const Here& here,
                                                      const ClusterPlaces& cluster) const {
  Peak at;
  for (int step = 0; step < 100; ++step) {
    double slope = -at.u;
    double curve = 1;
    for (const std::size_t i : cluster.places) {
      const double centre = here.centre(static_cast<Eigen::Index>(i)) + here.spread * at.u;
      const AftTerm term = aft_term(distribution_, row(i), centre, here.rate);
      slope += here.spread * term.c;
      curve -= here.spread * here.spread * term.cc;
    }
    at.width = 1 / std::sqrt(curve);
    const double move = slope / curve;
    if (!(std::fabs(move) > 1e-10)) {
      break;
    }
    const double now = joint(here, cluster, at.u);
    double length = 1;
    while (length > 1e-6 && std::fabs(move) > 1e-4 &&
           !(joint(here, cluster, at.u + length * move) >= now)) {
      length /= 2;
    }
    at.u += length * move;
  }
  return at;
}

AftFrailtyLikelihood::Weighed AftFrailtyLikelihood::weigh(const Here& here,
                                                          const ClusterPlaces& cluster) const {
  const Peak top = peak(here, cluster);
  const double reach = std::numbers::sqrt2 * top.width;
  Weighed out;
  double greatest = -std::numeric_limits<double>::infinity();
  for (const QuadratureNode& node : nodes_) {
    out.u.push_back(top.u + reach * node.x);
    out.weight.push_back(joint(here, cluster, out.u.back()) + node.x * node.x +
                         std::log(node.weight));
    greatest = std::max(greatest, out.weight.back());
  }
  double sum = 0;
  for (double& weight : out.weight) {
    weight = std::exp(weight - greatest);
    sum += weight;
  }
  for (double& weight : out.weight) {
    weight /= sum;
  }
  out.log_integral = std::log(sum * reach) + greatest;
  return out;
}

double AftFrailtyLikelihood::value(const Eigen::VectorXd& at) const {
  const Eigen::VectorXd centre = design_ * at.head(design_.cols());
  const Here here = here_at(centre, at);
  double sum = times_.jacobian;
  for (const ClusterPlaces& cluster : clusters_) {
    sum += weigh(here, cluster).log_integral;
  }
  return sum;
}

/// Slopes and information of the joint log density at one u.
void AftFrailtyLikelihood::add_node(const Here& here, const ClusterPlaces& cluster, double u,
                                    AftSlopes& sum) const {
  const Eigen::Index columns = design_.cols();
  const double shift = here.spread * u;
  for (const std::size_t i : cluster.places) {
    const auto place = static_cast<Eigen::Index>(i);
    const AftTerm term = aft_term(distribution_, row(i), here.centre(place) + shift, here.rate);
    const auto x = design_.row(place).transpose();
    sum.gradient.head(columns) += term.c * x;
    sum.gradient(columns) += term.r;
    sum.gradient(columns + 1) += term.c * shift;
    sum.information.topLeftCorner(columns, columns).noalias() -= (term.cc * x) * x.transpose();
    sum.information.col(columns).head(columns) -= term.cr * x;
    sum.information.col(columns + 1).head(columns) -= term.cc * shift * x;
    sum.information(columns, columns) -= term.rr;
    sum.information(columns, columns + 1) -= term.cr * shift;
    sum.information(columns + 1, columns + 1) -= (term.cc * shift + term.c) * shift;
  }
}

/// Means over u given the data (Louis): the score's mean is the marginal slope; the
/// information's mean less the score's spread is the marginal information.
void AftFrailtyLikelihood::add_cluster(const Here& here, const ClusterPlaces& cluster,
                                       AftSlopes& out) const {
  const Weighed weighed = weigh(here, cluster);
  Eigen::VectorXd mean = Eigen::VectorXd::Zero(size());
  for (std::size_t k = 0; k < weighed.u.size(); ++k) {
    AftSlopes node{0, Eigen::VectorXd::Zero(size()), Eigen::MatrixXd::Zero(size(), size())};
    add_node(here, cluster, weighed.u[k], node);
    mean += weighed.weight[k] * node.gradient;
    out.information.noalias() +=
        weighed.weight[k] * (node.information - node.gradient * node.gradient.transpose());
  }
  out.information += mean * mean.transpose();
  out.gradient += mean;
  out.value += weighed.log_integral;
}

AftSlopes AftFrailtyLikelihood::slopes(const Eigen::VectorXd& at) const {
  const Eigen::Index columns = design_.cols();
  const Eigen::VectorXd centre = design_ * at.head(columns);
  const Here here = here_at(centre, at);
  AftSlopes out{times_.jacobian, Eigen::VectorXd::Zero(size()),
                Eigen::MatrixXd::Zero(size(), size())};
  for (const ClusterPlaces& cluster : clusters_) {
    add_cluster(here, cluster, out);
  }
  out.information.triangularView<Eigen::StrictlyLower>() =
      out.information.transpose().triangularView<Eigen::StrictlyLower>();
  if (fixed_rate()) {
    out.gradient(columns) = out.gradient(columns + 1);
    out.information.col(columns) = out.information.col(columns + 1);
    out.information.row(columns) = out.information.row(columns + 1);
    out.gradient.conservativeResize(columns + 1);
    out.information.conservativeResize(columns + 1, columns + 1);
  }
  return out;
}

double AftFrailtyLikelihood::slope_at_zero(const Eigen::VectorXd& plain) const {
  const Eigen::VectorXd centre = design_ * plain.head(design_.cols());
  const AftRate rate(plain(design_.cols()), times_.unit);
  double sum = 0;
  for (const ClusterPlaces& cluster : clusters_) {
    double slope = 0;
    for (const std::size_t i : cluster.places) {
      const AftTerm term =
          aft_term(distribution_, row(i), centre(static_cast<Eigen::Index>(i)), rate);
      slope += term.c;
      sum += 0.5 * term.cc;
    }
    sum += 0.5 * slope * slope;
  }
  return sum;
}

AftFrailtyLikelihood::Effect AftFrailtyLikelihood::effect(const Eigen::VectorXd& at,
                                                          const ClusterPlaces& cluster) const {
  const Eigen::VectorXd centre = design_ * at.head(design_.cols());
  const Here here = here_at(centre, at);
  const Weighed weighed = weigh(here, cluster);
  Effect out;
  double square = 0;
  for (std::size_t k = 0; k < weighed.u.size(); ++k) {
    out.mean += weighed.weight[k] * weighed.u[k];
    square += weighed.weight[k] * weighed.u[k] * weighed.u[k];
  }
  out.deviation = std::sqrt(std::max(0.0, square - out.mean * out.mean));
  return out;
}

} // namespace baize::stats::detail
