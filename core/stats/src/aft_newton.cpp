#include "aft_newton.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <utility>

namespace baize::stats::detail {
namespace {

/// Errors beyond this on the standard scale mean that the data do not say: the
/// optimum lies at infinity.
constexpr double kGreatestVariance = 1e6;
constexpr double kGreatestRate = 1e8;
constexpr double kTolerance = 1e-12; ///< of the gain a further step promises

/// The longest step of 1 or less that keeps the rate above a tenth of itself.
double longest(const Eigen::VectorXd& at, const Eigen::VectorXd& move) {
  const double rate = at(at.size() - 1);
  const double change = move.size() == at.size() ? move(move.size() - 1) : 0;
  return change < 0 ? std::min(1.0, 0.9 * rate / -change) : 1;
}

Eigen::VectorXd moved(const Eigen::VectorXd& at, const Eigen::VectorXd& move, double length) {
  Eigen::VectorXd next = at;
  next.head(move.size()) += length * move;
  return next;
}

/// Ratios 0 and a rate from which no time lies in a far tail, or close to an optimum
/// of the same times with more covariates.
Eigen::VectorXd start(const AftLikelihood& likelihood, const StandardTimes& times,
                      const Optimum* near) {
  Eigen::VectorXd at = Eigen::VectorXd::Zero(likelihood.size());
  if (near != nullptr) {
    at << near->ratio.head(at.size() - 1), near->rate;
    return at;
  }
  double farthest = 1;
  for (std::size_t i = 0; i < times.low.size(); ++i) {
    for (const double y : {times.low[i], times.high[i]}) {
      farthest = std::isfinite(y) ? std::max(farthest, std::fabs(y)) : farthest;
    }
  }
  at(at.size() - 1) = likelihood.fixed_rate() ? times.unit : 3 / farthest;
  return at;
}

void finish(const AftLikelihood& likelihood, const Eigen::VectorXd& at, const AftSlopes& slopes,
            Optimum& out) {
  const Eigen::Index last = at.size() - 1;
  out.ratio = at.head(last);
  out.rate = at(last);
  out.log_likelihood = slopes.value;
  const Eigen::Index size = slopes.gradient.size();
  const Eigen::LLT<Eigen::MatrixXd> factor(slopes.information);
  if (factor.info() != Eigen::Success) {
    out.end = Optimum::End::not_determined;
    return;
  }
  out.covariance = factor.solve(Eigen::MatrixXd::Identity(size, size));
  Eigen::VectorXd variances = out.covariance.diagonal();
  if (!likelihood.fixed_rate()) {
    variances(last) /= out.rate * out.rate; // of its logarithm
  }
  if (!variances.allFinite() || variances.maxCoeff() > kGreatestVariance) {
    out.end = Optimum::End::not_determined;
  }
}

} // namespace

Optimum maximise_aft(const StandardTimes& times, const Eigen::MatrixXd& design,
                     const AftOptions& options, const Optimum* near) {
  const AftLikelihood likelihood(times, design, options.distribution);
  Eigen::VectorXd at = start(likelihood, times, near);
  Optimum out;
  AftSlopes slopes = likelihood.slopes(at);
  while (out.iterations < options.max_iterations && out.end == Optimum::End::not_converged) {
    ++out.iterations;
    const Eigen::VectorXd move = slopes.information.ldlt().solve(slopes.gradient);
    const double gain = slopes.gradient.dot(move);
    if (!std::isfinite(gain) || at(at.size() - 1) > kGreatestRate) {
      out.end = Optimum::End::not_determined;
      return out;
    }
    double length = longest(at, move);
    AftSlopes next = likelihood.slopes(moved(at, move, length));
    // Close to the top rounding hides the gain; there the full step is right.
    while (gain > 1e-9 && length > 1e-12 && !(next.value >= slopes.value + 1e-4 * length * gain)) {
      length /= 2;
      next = likelihood.slopes(moved(at, move, length));
    }
    at = moved(at, move, length);
    slopes = std::move(next);
    if (std::fabs(gain) <= kTolerance) {
      out.end = Optimum::End::converged;
    }
  }
  finish(likelihood, at, slopes, out);
  return out;
}

} // namespace baize::stats::detail
