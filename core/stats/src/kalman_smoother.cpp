#include "kalman_pass.h"

#include <algorithm>

namespace baize::stats {
namespace {

using detail::Step;
using detail::Update;

/// The backward recursions: r0, N0 for the finite part, r1, N1, N2 for the
/// diffuse one. N1 is the lower left block of the joint matrix, not symmetric.
struct Backward {
  Eigen::VectorXd r0;
  Eigen::VectorXd r1;
  Eigen::MatrixXd n0;
  Eigen::MatrixXd n1;
  Eigen::MatrixXd n2;

  explicit Backward(Eigen::Index states)
      : r0(Eigen::VectorXd::Zero(states)), r1(r0), n0(Eigen::MatrixXd::Zero(states, states)),
        n1(n0), n2(n0) {}

  void value(const Step& step, const Eigen::VectorXd& z) {
    const Eigen::Index states = z.size();
    const Eigen::MatrixXd l = Eigen::MatrixXd::Identity(states, states) - step.gain * z.transpose();
    if (step.update == Update::ordinary) {
      r0 = z * (step.error / step.variance) + l.transpose() * r0;
      n0 = z * z.transpose() / step.variance + l.transpose() * n0 * l;
      n1 = n1 * l;
      return;
    }
    const Eigen::MatrixXd l1 = -step.gain1 * z.transpose();
    const double f = step.infinite_var;
    r1 = z * (step.error / f) + l.transpose() * r1 + l1.transpose() * r0;
    r0 = l.transpose() * r0;
    const Eigen::MatrixXd cross = l.transpose() * n1 * l1;
    n2 = z * z.transpose() * (-step.variance / (f * f)) + l.transpose() * n2 * l + cross +
         cross.transpose() + l1.transpose() * n0 * l1;
    n1 = z * z.transpose() / f + l.transpose() * n1 * l + l1.transpose() * n0 * l;
    n0 = l.transpose() * n0 * l;
  }

  void move(const Eigen::MatrixXd& transition) {
    if (transition.size() == 0) {
      return;
    }
    r0 = transition.transpose() * r0;
    r1 = transition.transpose() * r1;
    for (Eigen::MatrixXd* n : {&n0, &n1, &n2}) {
      *n = transition.transpose() * *n * transition;
    }
  }

  StateEstimate state(const Step& step) const {
    const Eigen::MatrixXd& p = step.covariance;
    StateEstimate out{step.mean + p * r0, p - p * n0 * p, true};
    if (step.infinite.size() != 0) {
      const Eigen::MatrixXd& wide = step.infinite;
      const Eigen::MatrixXd cross = wide * n1 * p;
      out.mean += wide * r1;
      out.covariance -= cross + cross.transpose() + wide * n2 * wide;
    }
    out.covariance = (out.covariance + out.covariance.transpose()).eval() / 2;
    // A variance of nothing may come out as minus a rounding error.
    out.covariance.diagonal() = out.covariance.diagonal().cwiseMax(0);
    return out;
  }
};

} // namespace

KalmanSmoother kalman_smooth(const StateSpace& model) {
  const detail::Pass pass = detail::pass(model, false, true);
  KalmanSmoother result{pass.filter.summary, pass.filter.log_likelihood, {}};
  if (!result.summary.usable) {
    return result;
  }
  Backward back(model.start_mean.size());
  result.states.resize(model.steps.size());
  for (std::size_t i = model.steps.size(); i-- > 0;) {
    const Step& step = pass.steps[i];
    if (step.update != Update::none) {
      back.value(step, model.steps[i].loading);
    }
    result.states[i] = back.state(step);
    back.move(model.steps[i].transition);
  }
  const bool finite =
      std::all_of(result.states.begin(), result.states.end(), [](const StateEstimate& s) {
        return s.mean.allFinite() && s.covariance.allFinite();
      });
  if (!finite) {
    result.summary =
        degenerate({"not_finite", "states", "not finite", "finite numbers", "the smoother"});
  }
  return result;
}

} // namespace baize::stats
