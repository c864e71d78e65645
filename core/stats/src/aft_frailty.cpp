#include "baize/stats/aft_frailty.h"

#include "aft_fitting.h"
#include "aft_frailty_likelihood.h"
#include "baize/stats/distributions.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <string>

namespace baize::stats {
namespace {

using detail::AftFrailtyLikelihood;
using detail::AftSlopes;
using detail::ClusterPlaces;

constexpr double kLeastLogSpread = -9; ///< below that the spread is 0 for all we can see
constexpr double kTolerance = 1e-11;   ///< of the gain a further step promises

std::optional<units::Problem> bad_clusters(const std::vector<ClusterPlaces>& clusters) {
  if (clusters.size() < 2) {
    return units::Problem{"too_few_clusters", "clusters", std::to_string(clusters.size()),
                          "at least 2", ""};
  }
  const bool repeated = std::any_of(clusters.begin(), clusters.end(),
                                    [](const auto& one) { return one.places.size() > 1; });
  if (!repeated) {
    return units::Problem{"clusters_of_one", "clusters", "one observation in each",
                          "two observations in at least one of them", ""};
  }
  return std::nullopt;
}

struct Climb {
  Eigen::VectorXd at;
  AftSlopes last;
  int iterations = 0;
  enum class End { converged, boundary, not_converged } end = End::not_converged;
};

/// A step uphill: the information is made positive where it is not. The rate is
/// kept above a tenth of itself and the log spread moves by 1 at most.
Eigen::VectorXd uphill(const AftSlopes& slopes, const Eigen::VectorXd& at, bool fixed_rate) {
  const Eigen::Index size = slopes.gradient.size();
  Eigen::MatrixXd information = slopes.information;
  double ridge = 1e-6 * (1 + information.diagonal().cwiseAbs().maxCoeff());
  Eigen::LLT<Eigen::MatrixXd> factor(information);
  while (factor.info() != Eigen::Success && ridge < 1e12) {
    information = slopes.information + ridge * Eigen::MatrixXd::Identity(size, size);
    ridge *= 10;
    factor.compute(information);
  }
  Eigen::VectorXd move = factor.solve(slopes.gradient);
  double length = 1 / std::max(1.0, std::fabs(move(size - 1)));
  if (!fixed_rate) {
    length = std::min(length, 0.9 * at(size - 2) / std::max(1e-300, -move(size - 2)));
  }
  return length * move;
}

Eigen::VectorXd moved(const Eigen::VectorXd& at, const Eigen::VectorXd& move, double length) {
  Eigen::VectorXd next = at;
  if (move.size() == at.size()) {
    next += length * move;
    return next;
  }
  next.head(at.size() - 2) += length * move.head(move.size() - 1);
  next(at.size() - 1) += length * move(move.size() - 1);
  return next;
}

Climb climb(const AftFrailtyLikelihood& likelihood, Eigen::VectorXd at, int max_iterations) {
  Climb out{std::move(at), {}, 0, Climb::End::not_converged};
  while (out.iterations < max_iterations) {
    ++out.iterations;
    out.last = likelihood.slopes(out.at);
    const Eigen::VectorXd move = uphill(out.last, out.at, likelihood.fixed_rate());
    const double gain = out.last.gradient.dot(move);
    if (!std::isfinite(gain)) {
      return out;
    }
    if (gain <= kTolerance) {
      out.end = Climb::End::converged;
      return out;
    }
    double length = 1;
    while (
        gain > 1e-8 && length > 1e-10 &&
        !(likelihood.value(moved(out.at, move, length)) >= out.last.value + 1e-4 * length * gain)) {
      length /= 2;
    }
    out.at = moved(out.at, move, length);
    if (out.at(out.at.size() - 1) < kLeastLogSpread) {
      out.end = Climb::End::boundary;
      return out;
    }
  }
  return out;
}

/// The fit without clusters, said to lie at the edge.
void end_at_zero(const std::vector<ClusterPlaces>& clusters, AftFrailtyFit& out) {
  out.fit.summary.termination = Termination::boundary;
  out.fit.summary.message = "The clusters do not differ beyond chance: their spread is 0.";
  for (const ClusterPlaces& cluster : clusters) {
    out.effects.push_back({cluster.cluster, 0, 0, static_cast<int>(cluster.places.size())});
  }
}

void put_result(const detail::AftFitting& fitting, const AftFrailtyLikelihood& likelihood,
                const Climb& found, const Eigen::MatrixXd& covariance, AftFrailtyFit& out) {
  const Eigen::Index columns = fitting.design.columns.cols();
  const Eigen::Index last = covariance.rows() - 1;
  detail::Optimum optimum = fitting.optimum;
  optimum.ratio = found.at.head(columns);
  optimum.rate = found.at(columns);
  optimum.covariance = covariance.topLeftCorner(last, last);
  detail::translate(fitting, optimum, out.fit);
  out.fit.log_likelihood = found.last.value;
  out.fit.summary = converged(found.iterations);
  const double rate = optimum.rate;
  out.cluster_sd = std::exp(found.at(columns + 1)) * fitting.times.unit / rate;
  double variance = covariance(last, last);
  if (!likelihood.fixed_rate()) {
    variance += covariance(columns, columns) / (rate * rate) - 2 * covariance(columns, last) / rate;
  }
  out.log_cluster_sd_error = std::sqrt(std::max(0.0, variance));
  out.likelihood_ratio = std::max(0.0, 2 * (found.last.value - out.log_likelihood_plain));
  out.likelihood_ratio_p = 0.5 * chi_squared_upper(out.likelihood_ratio, 1);
}

} // namespace

std::optional<units::Problem> AftFrailtyOptions::problem() const {
  if (nodes < 3 || nodes > 99) {
    return units::Problem{"option_out_of_range", "nodes", std::to_string(nodes), "from 3 to 99",
                          "the options"};
  }
  return aft.problem();
}

AftFrailtyFit fit_aft_frailty(const std::vector<AftObservation>& observations,
                              const std::vector<int>& clusters, const AftFrailtyOptions& options) {
  AftFrailtyFit out;
  if (auto problem = options.problem()) {
    out.fit.summary = refused(*problem);
    return out;
  }
  const detail::AftFitting fitting = detail::begin_aft(observations, options.aft);
  out.fit = fitting.fit;
  if (!out.fit.summary.usable) {
    return out;
  }
  const auto places = detail::cluster_places(clusters, observations.size());
  if (!places) {
    out.fit.summary = refused(places.error());
    return out;
  }
  if (auto problem = bad_clusters(*places)) {
    out.fit.summary = degenerate(*problem);
    return out;
  }
  out.clusters = static_cast<int>(places->size());
  out.log_likelihood_plain = out.fit.log_likelihood;
  detail::compare_with_constant(fitting, options.aft, out.fit);
  const auto nodes = detail::gauss_hermite(options.nodes);
  const AftFrailtyLikelihood likelihood(fitting.times, fitting.design.columns,
                                        options.aft.distribution, *places, nodes);
  const Eigen::Index columns = fitting.design.columns.cols();
  Eigen::VectorXd start(likelihood.size());
  start << fitting.optimum.ratio, fitting.optimum.rate, 0;
  if (!(likelihood.slope_at_zero(start.head(columns + 1)) > 0)) {
    end_at_zero(*places, out);
    return out;
  }
  const Climb found = climb(likelihood, start, options.aft.max_iterations);
  if (found.end == Climb::End::boundary) {
    end_at_zero(*places, out);
    return out;
  }
  const Eigen::LLT<Eigen::MatrixXd> factor(found.last.information);
  if (found.end != Climb::End::converged || factor.info() != Eigen::Success) {
    out.fit.summary = {Termination::not_converged,
                       "The fit with clusters stopped before its optimum.",
                       {},
                       found.iterations,
                       false};
    return out;
  }
  const Eigen::Index size = found.last.gradient.size();
  put_result(fitting, likelihood, found, factor.solve(Eigen::MatrixXd::Identity(size, size)), out);
  for (const ClusterPlaces& cluster : *places) {
    const auto effect = likelihood.effect(found.at, cluster);
    out.effects.push_back({cluster.cluster, out.cluster_sd * effect.mean,
                           out.cluster_sd * effect.deviation,
                           static_cast<int>(cluster.places.size())});
  }
  detail::check_finite(out.fit);
  return out;
}

} // namespace baize::stats
