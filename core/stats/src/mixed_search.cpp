#include "mixed_search.h"

#include <Eigen/Cholesky>
#include <Eigen/Eigenvalues>

#include <cmath>
#include <limits>

namespace baize::stats::detail {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

/// Beyond this ratio of standard deviations the groups leave no error to speak of.
constexpr double kGreatestTheta = 1e5;
/// In parts of its bend: a theta below it is 0, for it adds less than 1e-8 to a variance of 1.
constexpr double kZero = 1e-4;
/// Of what a Newton step promised that was made: the error that it leaves is in
/// proportion to this; the slopes, taken before it, are a millionth of an error off.
constexpr double kPolished = 1e-12;

VectorXd everything(MixedCriterion& criterion, const VectorXd& theta) {
  const MixedValue at = criterion.value(theta);
  const Eigen::Index fixed = criterion.design().q.cols();
  VectorXd out =
      VectorXd::Constant(2 + fixed * (fixed + 1) / 2, std::numeric_limits<double>::quiet_NaN());
  if (at.finite) {
    const MatrixXd inverse = at.information.llt().solve(MatrixXd::Identity(fixed, fixed));
    out(0) = criterion.log_dets(at);
    out(1) = at.ss;
    Eigen::Index next = 2;
    for (Eigen::Index j = 0; j < fixed; ++j) {
      for (Eigen::Index i = j; i < fixed; ++i) {
        out(next++) = inverse(i, j);
      }
    }
  }
  return out;
}

struct Curve {
  VectorXd gradient;
  MatrixXd hessian;
};
/// Of the profiled criterion, log dets + count log ss.
Curve curve(const Derivatives& slopes, double count) {
  const auto size = static_cast<Eigen::Index>(slopes.first.size());
  const double ss = slopes.value(1);
  Curve out{VectorXd(size), MatrixXd(size, size)};
  for (Eigen::Index i = 0; i < size; ++i) {
    const VectorXd& first = slopes.first[i];
    out.gradient(i) = first(0) + count * first(1) / ss;
    for (Eigen::Index j = 0; j < size; ++j) {
      const VectorXd& second = slopes.second[i][j];
      out.hessian(i, j) =
          second(0) + count * (second(1) / ss - first(1) * slopes.first[j](1) / (ss * ss));
    }
  }
  return out;
}

struct Newton {
  VectorXd step;
  double promised = 0;
  VectorXd downhill; ///< empty unless the curve bends down somewhere
};
/// Directions in which nothing bends, as where a factor is singular, are left alone.
Newton newton(const Curve& curve, const VectorXd& bend) {
  // In units of the bends all directions compare.
  const MatrixXd scaled = bend.asDiagonal() * curve.hessian * bend.asDiagonal();
  const VectorXd slope = bend.cwiseProduct(curve.gradient);
  const Eigen::SelfAdjointEigenSolver<MatrixXd> eigen(scaled);
  const double flat = 1e-7 * std::max(1.0, eigen.eigenvalues().cwiseAbs().maxCoeff());
  Newton out{VectorXd::Zero(slope.size()), 0, {}};
  for (Eigen::Index i = 0; i < slope.size(); ++i) {
    const double value = eigen.eigenvalues()(i);
    const VectorXd direction = eigen.eigenvectors().col(i);
    const double along = direction.dot(slope);
    if (value > flat) {
      out.step -= along / value * direction;
      out.promised += along * along / value;
    } else if (value < -flat) {
      out.downhill = bend.cwiseProduct(direction);
    }
  }
  out.step = bend.cwiseProduct(out.step);
  return out;
}

/// Column signs so that each diagonal is 0 or more, and what is as good as 0 is 0.
void tidy(const MixedDesign& design, const VectorXd& bend, MixedOptimum& out) {
  Eigen::Index at = 0;
  for (const Grouping& term : design.terms) {
    for (int j = 0; j < term.columns; ++j) {
      const int rows = term.correlated ? term.columns - j : 1;
      if (out.theta(at) < 0) {
        out.theta.segment(at, rows) *= -1;
      }
      if (out.theta(at) < kZero * bend(at)) {
        out.theta(at) = 0;
        out.boundary = true;
      }
      at += rows;
    }
  }
}

} // namespace

VectorXd bends(const MixedDesign& design) {
  VectorXd out(design.thetas());
  Eigen::Index at = 0;
  for (const Grouping& term : design.terms) {
    out.segment(at, term.thetas()).setConstant(1 / std::sqrt(static_cast<double>(term.largest)));
    at += term.thetas();
  }
  return out;
}

std::vector<Eigen::Index> diagonal(const MixedDesign& design) {
  std::vector<Eigen::Index> out;
  Eigen::Index at = 0;
  for (const Grouping& term : design.terms) {
    for (int j = 0; j < term.columns; ++j) {
      out.push_back(at);
      at += term.correlated ? term.columns - j : 1;
    }
  }
  return out;
}

VectorXd start_theta(const MixedDesign& design, const Objective& objective) {
  const auto entries = diagonal(design);
  VectorXd best;
  double least = std::numeric_limits<double>::infinity();
  for (const double size : {1.0, 0.3, 0.1, 3.0}) {
    VectorXd theta = VectorXd::Zero(design.thetas());
    for (const Eigen::Index entry : entries) {
      theta(entry) = size;
    }
    const double value = objective(theta);
    if (best.size() == 0 || value < least) {
      best = theta;
      least = value;
    }
  }
  return best;
}

MixedOptimum search_theta(MixedCriterion& criterion, int max_iterations) {
  const MixedDesign& design = criterion.design();
  const VectorXd bend = bends(design);
  const Objective objective = [&](const VectorXd& theta) { return criterion.profiled(theta); };
  const Functions functions = [&](const VectorXd& theta) { return everything(criterion, theta); };
  MixedOptimum out;
  VectorXd start = start_theta(design, objective);
  for (int tries = 0; tries < 3; ++tries) {
    const Minimum found = minimise(objective, start, bend, max_iterations);
    out.theta = found.at;
    out.iterations += found.iterations;
    if (out.theta.cwiseAbs().maxCoeff() > kGreatestTheta) {
      out.end = MixedOptimum::End::no_residual;
      return out;
    }
    Newton next;
    for (int polish = 0; polish < 5; ++polish) {
      out.slopes = derivatives(functions, out.theta, bend);
      next = newton(curve(out.slopes, criterion.count()), bend);
      if (!next.step.allFinite()) {
        return out;
      }
      out.theta += next.step;
      ++out.iterations;
      if (next.promised < kPolished) {
        out.end = MixedOptimum::End::converged;
        break;
      }
    }
    if (next.downhill.size() == 0) {
      break;
    }
    // A saddle: the search came to rest where a variance of 0 is not the best.
    start = out.theta + next.downhill;
    out.end = MixedOptimum::End::not_converged;
  }
  tidy(design, bend, out);
  out.value = criterion.value(out.theta);
  out.end = out.value.finite ? out.end : MixedOptimum::End::not_converged;
  return out;
}

} // namespace baize::stats::detail
