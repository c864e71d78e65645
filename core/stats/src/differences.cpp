#include "differences.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace baize::stats::detail {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

VectorXd steps(const VectorXd& at, const VectorXd& bend, double share) {
  return share * (at.array().square() + bend.array().square()).sqrt();
}

VectorXd gradient(const Objective& objective, const VectorXd& at, const VectorXd& bend) {
  const VectorXd step = steps(at, bend, 1e-3);
  VectorXd out(at.size());
  VectorXd moved = at;
  for (Eigen::Index i = 0; i < at.size(); ++i) {
    moved(i) = at(i) + step(i);
    const double up = objective(moved);
    moved(i) = at(i) - step(i);
    out(i) = (up - objective(moved)) / (2 * step(i));
    moved(i) = at(i);
  }
  return out;
}

/// A step along `move` that lowers the value enough (Armijo), or 0. Where rounding hides
/// what a short step gains the value stays the same: no step is that, or the search would
/// go on about the minimum for ever.
double search_line(const Objective& objective, const Minimum& from, const VectorXd& move,
                   double slope, double& value) {
  double length = 1;
  for (int halvings = 0; halvings < 40; ++halvings) {
    value = objective(from.at + length * move);
    if (value < from.value && value <= from.value + 1e-4 * length * slope) {
      return length;
    }
    // The parabola through value, slope and the value found; kept within bounds.
    const double bent = value - from.value - length * slope;
    const double best = std::isfinite(bent) ? -slope * length * length / (2 * bent) : 0;
    length = std::clamp(best, 0.1 * length, 0.5 * length);
  }
  return 0;
}

void update_inverse(MatrixXd& inverse, const VectorXd& step, const VectorXd& change, bool first) {
  const double along = step.dot(change);
  if (!(along > 1e-12 * step.norm() * change.norm())) {
    return; // not convex here: the old curvature serves on
  }
  if (first) {
    inverse = MatrixXd::Identity(step.size(), step.size()) * (along / change.squaredNorm());
  }
  const VectorXd product = inverse * change;
  inverse += (1 + change.dot(product) / along) / along * step * step.transpose() -
             (product * step.transpose() + step * product.transpose()) / along;
}

/// Weights of the steps 1, 2 and 3 that cancel errors of the second and fourth order.
constexpr std::array<double, 3> kWeights{1.5, -0.6, 0.1};

class Stencil {
 public:
  Stencil(const Functions& functions, const VectorXd& at, const VectorXd& bend)
      : functions_(functions), at_(at), step_(steps(at, bend, 0.01)) {}

  void along(Eigen::Index i, Derivatives& out) const {
    VectorXd first = VectorXd::Zero(out.value.size());
    VectorXd second = first;
    for (int n = 1; n <= 3; ++n) {
      const double step = n * step_(i);
      VectorXd moved = at_;
      moved(i) += step;
      const VectorXd up = functions_(moved);
      moved(i) = at_(i) - step;
      const VectorXd down = functions_(moved);
      const double weight = kWeights[static_cast<std::size_t>(n - 1)];
      first += weight / (2 * step) * (up - down);
      second += weight / (step * step) * (up - 2 * out.value + down);
    }
    out.first[static_cast<std::size_t>(i)] = first;
    out.second[static_cast<std::size_t>(i)][static_cast<std::size_t>(i)] = second;
  }

  VectorXd across(Eigen::Index i, Eigen::Index j, Eigen::Index size) const {
    VectorXd out = VectorXd::Zero(size);
    for (int n = 1; n <= 3; ++n) {
      for (const double a : {1.0, -1.0}) {
        for (const double b : {1.0, -1.0}) {
          VectorXd moved = at_;
          moved(i) += a * n * step_(i);
          moved(j) += b * n * step_(j);
          out += a * b * kWeights[static_cast<std::size_t>(n - 1)] /
                 (4 * n * n * step_(i) * step_(j)) * functions_(moved);
        }
      }
    }
    return out;
  }

 private:
  const Functions& functions_;
  const VectorXd& at_;
  VectorXd step_;
};

} // namespace

Minimum minimise(const Objective& objective, const VectorXd& start, const VectorXd& bend,
                 int max_iterations, double tolerance) {
  Minimum out{start, objective(start), 0, false};
  VectorXd slope = gradient(objective, out.at, bend);
  const VectorXd reach = steps(out.at, bend, 0.3);
  MatrixXd inverse = (reach.array() / slope.array().abs().max(1e-300)).matrix().asDiagonal();
  bool first = true;
  bool fresh = true; // the inverse holds no curvature from before a failure
  while (out.iterations < max_iterations) {
    VectorXd move = -inverse * slope;
    const double promised = slope.dot(move);
    if (std::fabs(promised) < tolerance) {
      out.converged = true;
      break;
    }
    ++out.iterations;
    double value = out.value;
    const double length = search_line(objective, out, move, promised, value);
    if (!(length > 0)) {
      // Nothing lower to be found: where little was promised, rounding hides it.
      out.converged = std::fabs(promised) < 1e-8 * std::max(1.0, std::fabs(out.value));
      if (fresh || out.converged) {
        break;
      }
      fresh = true;
      inverse = (1e-3 * reach.array() / slope.array().abs().max(1e-300)).matrix().asDiagonal();
      continue;
    }
    out.at += length * move;
    out.value = value;
    const VectorXd next = gradient(objective, out.at, bend);
    update_inverse(inverse, length * move, next - slope, first);
    slope = next;
    first = false;
    fresh = false;
  }
  return out;
}

Derivatives derivatives(const Functions& functions, const VectorXd& at, const VectorXd& bend) {
  const auto size = static_cast<std::size_t>(at.size());
  Derivatives out{functions(at), std::vector<VectorXd>(size),
                  std::vector<std::vector<VectorXd>>(size, std::vector<VectorXd>(size))};
  const Stencil stencil(functions, at, bend);
  for (std::size_t i = 0; i < size; ++i) {
    stencil.along(static_cast<Eigen::Index>(i), out);
    for (std::size_t j = 0; j < i; ++j) {
      out.second[i][j] = out.second[j][i] = stencil.across(
          static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j), out.value.size());
    }
  }
  return out;
}

} // namespace baize::stats::detail
