#include "search.h"

#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>
#include <nlopt.h>

namespace baize::season {
namespace {

constexpr double kReach = 5;        ///< scaled parameters stay within so many sd
constexpr double kStep = 0.02;      ///< of the differences
constexpr double kFlattest = 0.2;   ///< least curvature: beliefs alone give about 1
constexpr double kGain = 1e-5;      ///< of the log-likelihood, not worth another step
constexpr double kRoughGain = 0.01; ///< where BOBYQA hands over to Newton
constexpr int kMostEvaluations = 3000;
constexpr int kNewtonSteps = 8;

struct Search {
  const std::function<double(const Eigen::VectorXd&)>& height;
  const std::function<bool()>& go_on;
  int evaluations = 0;
  nlopt_opt optimizer = nullptr;

  double operator()(const Eigen::VectorXd& at) {
    ++evaluations;
    const double value = height(at);
    return std::isfinite(value) ? value : -1e100;
  }
};

double ask(unsigned size, const double* x, double*, void* data) {
  auto& search = *static_cast<Search*>(data);
  if (search.go_on && !search.go_on()) {
    nlopt_force_stop(search.optimizer);
  }
  return search(Eigen::Map<const Eigen::VectorXd>(x, size));
}

bool climb(Search& search, Eigen::VectorXd& at, double& height) {
  search.optimizer = nlopt_create(NLOPT_LN_BOBYQA, static_cast<unsigned>(at.size()));
  if (search.optimizer == nullptr) {
    return false;
  }
  nlopt_set_max_objective(search.optimizer, ask, &search);
  nlopt_set_lower_bounds1(search.optimizer, -kReach);
  nlopt_set_upper_bounds1(search.optimizer, kReach);
  nlopt_set_initial_step1(search.optimizer, 0.5);
  nlopt_set_ftol_abs(search.optimizer, kRoughGain);
  nlopt_set_maxeval(search.optimizer, kMostEvaluations);
  const nlopt_result result = nlopt_optimize(search.optimizer, at.data(), &height);
  nlopt_destroy(search.optimizer);
  return result > 0 || result == NLOPT_ROUNDOFF_LIMITED;
}

/// Slopes by central differences; the heights to both sides are kept.
Eigen::VectorXd slope_at(Search& search, const Eigen::VectorXd& at, Eigen::MatrixXd& sides) {
  sides.resize(at.size(), 2);
  for (Eigen::Index i = 0; i < at.size(); ++i) {
    Eigen::VectorXd beside = at;
    beside(i) = at(i) + kStep;
    sides(i, 0) = search(beside);
    beside(i) = at(i) - kStep;
    sides(i, 1) = search(beside);
  }
  return (sides.col(0) - sides.col(1)) / (2 * kStep);
}

/// Minus the second derivatives.
Eigen::MatrixXd curvature_at(Search& search, const Eigen::VectorXd& at, double height,
                             const Eigen::MatrixXd& sides) {
  const double square = kStep * kStep;
  Eigen::MatrixXd curvature(at.size(), at.size());
  for (Eigen::Index i = 0; i < at.size(); ++i) {
    curvature(i, i) = -(sides(i, 0) + sides(i, 1) - 2 * height) / square;
    for (Eigen::Index j = 0; j < i; ++j) {
      Eigen::VectorXd beside = at;
      beside(i) = at(i) + kStep;
      beside(j) = at(j) + kStep;
      const double up = search(beside);
      beside(i) = at(i) - kStep;
      beside(j) = at(j) - kStep;
      const double down = search(beside);
      curvature(i, j) =
          -(up + down - sides.row(i).sum() - sides.row(j).sum() + 2 * height) / (2 * square);
      curvature(j, i) = curvature(i, j);
    }
  }
  return curvature;
}

} // namespace

Peak find_peak(Eigen::Index size, const std::function<double(const Eigen::VectorXd&)>& height,
               const std::function<bool()>& go_on) {
  Peak peak;
  Search search{height, go_on};
  peak.at = Eigen::VectorXd::Zero(size);
  peak.found = climb(search, peak.at, peak.height);
  if (!peak.found) {
    return peak;
  }
  Eigen::MatrixXd sides;
  Eigen::VectorXd slope = slope_at(search, peak.at, sides);
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> parts(
      curvature_at(search, peak.at, peak.height, sides));
  const Eigen::VectorXd spread = parts.eigenvalues().cwiseMax(kFlattest).cwiseInverse();
  for (int step = 0; step < kNewtonSteps && !peak.settled; ++step) {
    const Eigen::VectorXd move =
        parts.eigenvectors() * spread.cwiseProduct(parts.eigenvectors().transpose() * slope);
    peak.settled = slope.dot(move) / 2 < kGain;
    const Eigen::VectorXd next = (peak.at + move).cwiseMax(-kReach).cwiseMin(kReach);
    const double there = search(next);
    if (there < peak.height) {
      break;
    }
    peak.at = next;
    peak.height = there;
    if (!peak.settled) {
      slope = slope_at(search, peak.at, sides);
    }
  }
  peak.root = parts.eigenvectors() * spread.cwiseSqrt().asDiagonal();
  peak.evaluations = search.evaluations;
  return peak;
}

} // namespace baize::season
