#include "aft_newton.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <tuple>
#include <utility>

namespace baize::stats::detail {
namespace {

/// Errors beyond this on the standard scale mean that the data do not say: the
/// optimum lies at infinity.
constexpr double kGreatestVariance = 1e6;
constexpr double kGreatestRate = 1e8;
constexpr double kGreatestLoss = 100; ///< of log-likelihood, to start from another optimum
constexpr double kTolerance = 1e-12;  ///< of the gain a further step promises
constexpr double kRounding = 1e-8;    ///< of it, where it no longer falls
constexpr double kSamePlace = 1e-16;  ///< of it: nothing there differs in the first 9 digits

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

/// The mean and the standard deviation of W.
struct Moments {
  double mean;
  double deviation;
};
Moments moments(AftDistribution distribution) {
  switch (distribution) {
  case AftDistribution::log_normal:
    return {0, 1};
  case AftDistribution::log_logistic:
    return {0, std::numbers::pi / std::numbers::sqrt3};
  case AftDistribution::exponential:
  case AftDistribution::weibull:
    break;
  }
  return {-std::numbers::egamma, std::numbers::pi / std::sqrt(6.0)};
}

/// From two thirds of the scale that the ends' scatter of 1 would give (the width of
/// intervals and the covariates are in that), unless a time would then lie in a far tail.
double start_rate(const StandardTimes& times, double deviation) {
  double farthest = 1;
  for (std::size_t i = 0; i < times.low.size(); ++i) {
    for (const double y : {times.low[i], times.high[i]}) {
      farthest = std::isfinite(y) ? std::max(farthest, std::fabs(y)) : farthest;
    }
  }
  return std::min(1.5 * deviation, 8 / farthest);
}

using Place = std::pair<Eigen::VectorXd, AftSlopes>;

/// No effects and the mean of W at the times' centre, or an optimum of the same times
/// with more covariates if those do not make all of the difference.
Place start(const AftLikelihood& likelihood, const StandardTimes& times,
            AftDistribution distribution, const Optimum* near) {
  Eigen::VectorXd at = Eigen::VectorXd::Zero(likelihood.size());
  if (near != nullptr) {
    at << near->ratio.head(at.size() - 1), near->rate;
    AftSlopes slopes = likelihood.slopes(at);
    if (slopes.value > near->log_likelihood - kGreatestLoss) {
      return {std::move(at), std::move(slopes)};
    }
    at.setZero();
  }
  const auto [mean, deviation] = moments(distribution);
  at(0) = -mean;
  at(at.size() - 1) = likelihood.fixed_rate() ? times.unit : start_rate(times, deviation);
  return {at, likelihood.slopes(at)};
}

/// Uphill along a step of Newton's, halved until the likelihood grows.
Place next_place(const AftLikelihood& likelihood, const Eigen::VectorXd& at,
                 const AftSlopes& slopes, const Eigen::VectorXd& move) {
  const double gain = slopes.gradient.dot(move);
  double length = std::min(longest(at, move), likelihood.reach(at, move));
  while (true) {
    Eigen::VectorXd place = moved(at, move, length);
    AftSlopes next = likelihood.slopes(place);
    // Close to the top rounding hides the gain; there the full step is right.
    if (!(gain > 1e-9 && length > 1e-12) || next.value >= slopes.value + 1e-4 * length * gain) {
      return {std::move(place), std::move(next)};
    }
    length /= 2;
  }
}

/// Nothing is left to gain, or only what rounding makes up and no step takes away.
bool at_the_top(double gain, double before) {
  return std::fabs(gain) <= kTolerance ||
         (std::fabs(gain) <= kRounding && std::fabs(gain) > 0.5 * std::fabs(before));
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
  auto [at, slopes] = start(likelihood, times, options.distribution, near);
  Optimum out;
  double gain_before = std::numeric_limits<double>::infinity();
  while (out.iterations < options.max_iterations && out.end == Optimum::End::not_converged) {
    ++out.iterations;
    const Eigen::VectorXd move = slopes.information.ldlt().solve(slopes.gradient);
    const double gain = slopes.gradient.dot(move);
    if (!std::isfinite(gain) || at(at.size() - 1) > kGreatestRate) {
      out.end = Optimum::End::not_determined;
      return out;
    }
    if (at_the_top(gain, gain_before)) {
      out.end = Optimum::End::converged;
    }
    if (std::fabs(gain) <= kSamePlace) {
      at = moved(at, move, 1);
      break;
    }
    std::tie(at, slopes) = next_place(likelihood, at, slopes, move);
    gain_before = gain;
  }
  finish(likelihood, at, slopes, out);
  return out;
}

} // namespace baize::stats::detail
