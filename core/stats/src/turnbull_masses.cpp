#include "turnbull_masses.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace baize::stats::detail {
namespace {

using Numbers = std::vector<double>;

/// The total of all counts is the multiplier of "adds up to 1", so the search is
/// over masses of 0 or more only, of log L - total * sum of masses.
class Search {
 public:
  Search(const std::vector<Covering>& rows, int sets)
      : rows_(rows), mass_(static_cast<std::size_t>(sets), 1.0 / sets), slope_(mass_.size()) {
    for (const Covering& row : rows) {
      total_ += row.count;
    }
  }

  void self_consistency(int steps) {
    for (int i = 0; i < steps; ++i) {
      look();
      for (std::size_t j = 0; j < mass_.size(); ++j) {
        mass_[j] *= 1 + slope_[j] / total_;
      }
    }
    look();
    const double small = 1e-3 / static_cast<double>(mass_.size());
    for (std::size_t j = 0; j < mass_.size(); ++j) {
      if (mass_[j] < small && slope_[j] < 0) {
        mass_[j] = 0;
      } else {
        free_.push_back(static_cast<int>(j));
      }
    }
  }

  /// One round: a Newton step on the free masses, or the freeing of one. True at
  /// the optimum.
  bool round(double tolerance) {
    look();
    double worst = 0;
    for (const int j : free_) {
      worst = std::max(worst, std::fabs(at(slope_, j)));
    }
    if (worst <= tolerance / 2) {
      const auto steepest = std::max_element(slope_.begin(), slope_.end());
      if (*steepest <= tolerance) {
        return true;
      }
      const int j = static_cast<int>(steepest - slope_.begin());
      free_.insert(std::lower_bound(free_.begin(), free_.end(), j), j);
    }
    step();
    return false;
  }

  Masses result() {
    const double sum = std::accumulate(mass_.begin(), mass_.end(), 0.0);
    for (double& m : mass_) {
      m /= sum;
    }
    look();
    Masses out;
    out.gap = std::max(0.0, *std::max_element(slope_.begin(), slope_.end()));
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      out.log_likelihood += rows_[i].count * std::log(covered_[i]);
    }
    out.mass = mass_;
    return out;
  }

 private:
  static double& at(Numbers& numbers, int j) { return numbers[static_cast<std::size_t>(j)]; }

  void cover(const Numbers& mass, Numbers& covered) const {
    covered.resize(rows_.size());
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      covered[i] =
          std::accumulate(mass.begin() + rows_[i].first, mass.begin() + rows_[i].last + 1, 0.0);
    }
  }

  /// What each row covers now, and the slope of the target in each mass.
  void look() {
    cover(mass_, covered_);
    std::fill(slope_.begin(), slope_.end(), -total_);
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      for (int j = rows_[i].first; j <= rows_[i].last; ++j) {
        at(slope_, j) += rows_[i].count / covered_[i];
      }
    }
  }

  double target(const Numbers& mass, Numbers& covered) const {
    cover(mass, covered);
    double sum = -total_ * std::accumulate(mass.begin(), mass.end(), 0.0);
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      sum += rows_[i].count * std::log(covered[i]);
    }
    return sum;
  }

  /// Minus the second derivatives in the free masses: entry (j, k) sums what
  /// covers both, found by adding up over first, then over last.
  Eigen::MatrixXd curvature() const {
    const auto size = static_cast<Eigen::Index>(free_.size());
    Eigen::MatrixXd h = Eigen::MatrixXd::Zero(size, size);
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      const auto first = std::lower_bound(free_.begin(), free_.end(), rows_[i].first);
      const auto end = std::upper_bound(free_.begin(), free_.end(), rows_[i].last);
      if (first < end) {
        h(first - free_.begin(), end - free_.begin() - 1) +=
            rows_[i].count / (covered_[i] * covered_[i]);
      }
    }
    for (Eigen::Index k = 0; k < size; ++k) {
      for (Eigen::Index j = 1; j <= k; ++j) {
        h(j, k) += h(j - 1, k);
      }
    }
    for (Eigen::Index k = size - 1; k-- > 0;) {
      h.col(k).head(k + 1) += h.col(k + 1).head(k + 1);
    }
    return h.selfadjointView<Eigen::Upper>();
  }

  void step() {
    Eigen::MatrixXd h = curvature();
    Eigen::VectorXd slope(h.rows());
    for (Eigen::Index k = 0; k < h.rows(); ++k) {
      slope(k) = at(slope_, free_[static_cast<std::size_t>(k)]);
    }
    // Where the masses are not unique the ridge turns a flat direction into a
    // long step, which ends at a bound.
    h.diagonal().array() += 1e-12 * h.diagonal().maxCoeff();
    const Eigen::VectorXd move = h.ldlt().solve(slope);
    double length = 1;
    Eigen::Index blocked = -1;
    for (Eigen::Index k = 0; k < move.size(); ++k) {
      const double mass = at(mass_, free_[static_cast<std::size_t>(k)]);
      if (move(k) < 0 && mass < -move(k) * length) {
        length = mass / -move(k);
        blocked = k;
      }
    }
    const double gain = slope.dot(move);
    const double before = target(mass_, covered_);
    Numbers next = moved(move, length);
    // Within rounding of the top the target cannot judge a Newton step.
    while (gain > 1e-9 && !(target(next, covered_) >= before + 1e-4 * length * gain) &&
           length > 1e-12) {
      length /= 2;
      blocked = -1;
      next = moved(move, length);
    }
    mass_ = std::move(next);
    if (blocked >= 0) {
      at(mass_, free_[static_cast<std::size_t>(blocked)]) = 0;
      free_.erase(free_.begin() + blocked);
    }
  }

  Numbers moved(const Eigen::VectorXd& move, double length) {
    Numbers next = mass_;
    for (Eigen::Index k = 0; k < move.size(); ++k) {
      double& mass = at(next, free_[static_cast<std::size_t>(k)]);
      mass = std::max(0.0, mass + length * move(k));
    }
    return next;
  }

  const std::vector<Covering>& rows_;
  Numbers mass_;
  Numbers slope_;
  Numbers covered_;
  std::vector<int> free_;
  double total_ = 0;
};

} // namespace

Masses maximise_masses(const std::vector<Covering>& rows, int sets, int max_iterations,
                       double tolerance) {
  constexpr int kSelfConsistency = 60;
  Search search(rows, sets);
  search.self_consistency(std::min(kSelfConsistency, max_iterations));
  bool converged = false;
  int iterations = std::min(kSelfConsistency, max_iterations);
  while (!converged && iterations < max_iterations) {
    converged = search.round(tolerance);
    ++iterations;
  }
  Masses out = search.result();
  out.iterations = iterations;
  out.converged = converged;
  return out;
}

} // namespace baize::stats::detail
