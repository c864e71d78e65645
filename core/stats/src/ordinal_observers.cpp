#include "baize/stats/ordinal_observers.h"

#include "baize/stats/distributions.h"
#include "checks.h"
#include "differences.h"
#include "gauss_hermite.h"
#include "ordinal_design.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>
#include <utility>

namespace baize::stats {
namespace {

using detail::OrdinalDesign;
using Eigen::MatrixXd;
using Eigen::VectorXd;
using units::Problem;

/// The search moves in the first threshold, the logarithms of the gaps between
/// them, coefficients and the observers' deviation, whose sign does not matter: no
/// bounds are left.
class ObserverLikelihood {
 public:
  ObserverLikelihood(const OrdinalDesign& design, std::vector<std::vector<std::size_t>> rows,
                     int nodes)
      : design_(design), rows_(std::move(rows)), nodes_(detail::gauss_hermite(nodes)) {
    for (detail::QuadratureNode& node : nodes_) { // from exp(-x^2) to the normal density
      node.x *= std::numbers::sqrt2;
      node.weight *= std::numbers::inv_sqrtpi;
    }
  }

  VectorXd free(const VectorXd& at, double sd) const {
    VectorXd out(at.size() + 1);
    out << at, sd;
    for (Eigen::Index j = design_.thresholds() - 1; j > 0; --j) {
      out(j) = std::log(at(j) - at(j - 1));
    }
    return out;
  }
  VectorXd parameters(const VectorXd& free) const {
    VectorXd out = free.head(free.size() - 1);
    for (Eigen::Index j = 1; j < design_.thresholds(); ++j) {
      out(j) = out(j - 1) + std::exp(free(j));
    }
    return out;
  }
  /// d (parameters, sd) / d free.
  MatrixXd jacobian(const VectorXd& free) const {
    MatrixXd out = MatrixXd::Identity(free.size(), free.size());
    const Eigen::Index cuts = design_.thresholds();
    for (Eigen::Index i = 1; i < cuts; ++i) {
      out(i, 0) = 1;
      for (Eigen::Index j = 1; j <= i; ++j) {
        out(i, j) = std::exp(free(j));
      }
    }
    return out;
  }

  double minus_twice_log(const VectorXd& free) const {
    const VectorXd at = parameters(free);
    const double sd = free(free.size() - 1);
    double sum = 0;
    for (std::size_t o = 0; o < rows_.size(); ++o) {
      sum += integrate(o, at, sd).log_mean;
    }
    return std::isfinite(sum) ? -2 * sum : std::numeric_limits<double>::infinity();
  }

  struct Shift {
    double log_mean = 0;
    double mean = 0; ///< of the shift in units of sd
    double sd = 0;
  };
  Shift integrate(std::size_t observer, const VectorXd& at, double sd) const {
    const auto [mode, spread] = peak(observer, at, sd);
    std::vector<double> logs;
    double greatest = -std::numeric_limits<double>::infinity();
    for (const detail::QuadratureNode& node : nodes_) {
      const double u = mode + spread * node.x;
      logs.push_back(height(observer, at, sd, u) + 0.5 * (node.x * node.x - u * u));
      greatest = std::max(greatest, logs.back());
    }
    double sum = 0;
    double first = 0;
    double second = 0;
    for (std::size_t n = 0; n < nodes_.size(); ++n) {
      const double mass = nodes_[n].weight * std::exp(logs[n] - greatest);
      const double u = mode + spread * nodes_[n].x;
      sum += mass;
      first += mass * u;
      second += mass * u * u;
    }
    const double mean = first / sum;
    return {greatest + std::log(sum * spread), mean,
            std::sqrt(std::max(0.0, second / sum - mean * mean))};
  }

 private:
  double height(std::size_t observer, const VectorXd& at, double sd, double u) const {
    double sum = 0;
    for (const std::size_t i : rows_[observer]) {
      sum += design_.weight[i] * design_.term(at, i, sd * u).value;
    }
    return sum;
  }

  /// Where the integrand is greatest, and the deviation of the normal curve that fits
  /// it there. It is log-concave, so Newton's steps, shortened where too long, arrive.
  std::pair<double, double> peak(std::size_t observer, const VectorXd& at, double sd) const {
    double u = 0;
    double spread = 1;
    for (int step = 0; step < 50; ++step) {
      double slope = -u;
      double bend = 1;
      for (const std::size_t i : rows_[observer]) {
        const detail::Between term = design_.term(at, i, sd * u);
        slope -= design_.weight[i] * sd * (term.da + term.db);
        bend -= design_.weight[i] * sd * sd * (term.daa + 2 * term.dab + term.dbb);
      }
      spread = 1 / std::sqrt(bend);
      const double move = std::clamp(slope / bend, -2.0, 2.0);
      u += move;
      if (!(std::fabs(move) > 1e-12)) {
        break;
      }
    }
    return {u, spread};
  }

  const OrdinalDesign& design_;
  std::vector<std::vector<std::size_t>> rows_;
  std::vector<detail::QuadratureNode> nodes_;
};

std::optional<Problem> bad_observers(const OrdinalData& data, const std::vector<int>& observer) {
  if (auto problem = lengths_differ("observer", observer.size(), data.category.size())) {
    return problem;
  }
  std::map<int, int> count;
  int most = 0;
  for (const int one : observer) {
    most = std::max(most, ++count[one]);
  }
  if (count.size() < 2) {
    return Problem{"one_group", "observer", "one observer", "at least two", ""};
  }
  if (most < 2) {
    return Problem{"group_is_row", "observer", "one row each", "such that one has two rows", ""};
  }
  return std::nullopt;
}

/// A deviation so small moves no probability by more than 1e-8.
constexpr double kNoDeviation = 1e-4;

void fill(const OrdinalDesign& design, const ObserverLikelihood& likelihood, VectorXd free,
          const std::vector<int>& label, OrdinalObservers& out) {
  const Eigen::Index last = free.size() - 1;
  const VectorXd bend = VectorXd::Constant(free.size(), 1);
  const detail::Functions objective = [&](const VectorXd& here) {
    return VectorXd::Constant(1, likelihood.minus_twice_log(here));
  };
  const auto slopes = detail::derivatives(objective, free, bend);
  MatrixXd hessian(free.size(), free.size());
  VectorXd gradient(free.size());
  for (Eigen::Index i = 0; i < free.size(); ++i) {
    gradient(i) = slopes.first[i](0) / 2;
    for (Eigen::Index j = 0; j < free.size(); ++j) {
      hessian(i, j) = slopes.second[i][j](0) / 2;
    }
  }
  const Eigen::LLT<MatrixXd> factor(hessian);
  free -= factor.solve(gradient); // what the search's coarser differences left
  const double value = likelihood.minus_twice_log(free);
  const VectorXd at = likelihood.parameters(free);
  const MatrixXd jacobian = likelihood.jacobian(free);
  const MatrixXd covariance = jacobian *
                              hessian.llt().solve(MatrixXd::Identity(free.size(), free.size())) *
                              jacobian.transpose();
  detail::report_ordinal(design, at, covariance.topLeftCorner(last, last), out.fit);
  MatrixXd outside = MatrixXd::Identity(free.size(), free.size());
  outside.topLeftCorner(last, last) = design.outside;
  const MatrixXd all = outside * covariance * outside.transpose();
  out.fit.covariance.clear();
  for (Eigen::Index i = 0; i < all.rows(); ++i) {
    out.fit.covariance.emplace_back(all.row(i).begin(), all.row(i).end());
  }
  out.observer_sd = free(last);
  out.observer_sd_error = std::sqrt(all(last, last));
  for (std::size_t o = 0; o < label.size(); ++o) {
    const auto shift = likelihood.integrate(o, at, out.observer_sd);
    out.observers.push_back({label[o], shift.mean * out.observer_sd, shift.sd * out.observer_sd});
  }
  out.fit.log_likelihood = -value / 2;
  out.fit.deviance = value;
  if (factor.info() != Eigen::Success || !all.allFinite() || !std::isfinite(value)) {
    out.summary = degenerate({"not_determined", "observers", "no curvature at the best fit",
                              "data that tell observers from thresholds", ""});
  }
}

/// Observers who do not differ: the plain fit is the answer.
void fill_without(const OrdinalFit& plain, const std::vector<int>& label, OrdinalObservers& out) {
  out.fit = plain;
  for (auto& row : out.fit.covariance) {
    row.push_back(0);
  }
  out.fit.covariance.emplace_back(plain.covariance.size() + 1, 0.0);
  for (const int one : label) {
    out.observers.push_back({one, 0, 0});
  }
  out.summary.termination = Termination::boundary;
  out.summary.message = "Converged: the observers differ no more than by chance.";
}

} // namespace

std::optional<Problem> OrdinalObserversOptions::problem() const {
  if (nodes < 1 || nodes > 99) {
    return Problem{"option_out_of_range", "nodes", std::to_string(nodes), "from 1 to 99",
                   "the options"};
  }
  return OrdinalOptions{link, max_iterations}.problem();
}

OrdinalObservers fit_ordinal_observers(const OrdinalData& data, const std::vector<int>& observer,
                                       const OrdinalObserversOptions& options) {
  OrdinalObservers out;
  auto problem = options.problem();
  problem = problem ? problem : bad_observers(data, observer);
  if (problem) {
    out.summary = refused(*problem);
    return out;
  }
  const OrdinalOptions plain_options{options.link, options.max_iterations};
  const OrdinalFit plain = fit_ordinal(data, plain_options);
  OrdinalDesign design;
  if (!plain.summary.usable || detail::make_ordinal(data, plain_options, design)) {
    out.summary = plain.summary;
    return out;
  }
  std::map<int, std::vector<std::size_t>> by_observer;
  for (std::size_t i = 0; i < design.row.size(); ++i) {
    by_observer[observer[design.row[i]]].push_back(i);
  }
  std::vector<int> label;
  std::vector<std::vector<std::size_t>> rows;
  for (auto& [one, theirs] : by_observer) {
    label.push_back(one);
    rows.push_back(std::move(theirs));
  }
  const ObserverLikelihood likelihood(design, std::move(rows), options.nodes);
  const auto start = detail::maximise_ordinal(design, options.max_iterations);
  const VectorXd bend = VectorXd::Constant(design.size() + 1, 1);
  auto found =
      detail::minimise([&](const VectorXd& free) { return likelihood.minus_twice_log(free); },
                       likelihood.free(start.at, 0.5), bend, options.max_iterations, 1e-8);
  const Eigen::Index last = found.at.size() - 1;
  found.at(last) = std::fabs(found.at(last));
  out.fit.link = options.link;
  out.fit.summary = out.summary = detail::ordinal_ended(design, found.iterations);
  if (!found.converged) {
    out.fit.summary = out.summary = {Termination::not_converged,
                                     "The search did not reach an optimum.",
                                     {},
                                     found.iterations,
                                     false};
    return out;
  }
  if (found.at(last) < kNoDeviation) {
    fill_without(plain, label, out);
    return out;
  }
  fill(design, likelihood, found.at, label, out);
  out.fit.log_likelihood_null = plain.log_likelihood_null;
  out.likelihood_ratio = std::max(0.0, 2 * (out.fit.log_likelihood - plain.log_likelihood));
  out.likelihood_ratio_p =
      out.likelihood_ratio > 0 ? 0.5 * chi_squared_upper(out.likelihood_ratio, 1) : 1;
  return out;
}

} // namespace baize::stats
