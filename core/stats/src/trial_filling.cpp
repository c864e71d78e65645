#include "trial_filling.h"

#include <Eigen/Eigenvalues>

namespace baize::stats::detail {
namespace {

using Matrix = Eigen::MatrixXd;

/// Squared lengths between 0 and 1; below this, 0 but for rounding.
constexpr double kNothing = 1e-9;

/// Row i: what `project` leaves of lost plot i alone.
template <class Project> Matrix rows_of(const Filling& fill, std::size_t plots, Project project) {
  Matrix rows(static_cast<Eigen::Index>(fill.lost.size()), static_cast<Eigen::Index>(plots));
  for (std::size_t i = 0; i < fill.lost.size(); ++i) {
    Column alone(plots, 0);
    alone[fill.lost[i]] = 1;
    const Column left = project(alone);
    for (std::size_t k = 0; k < plots; ++k) {
      rows(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(k)) =
          static_cast<double>(left[k]);
    }
  }
  return rows;
}

Matrix at_lost(const Filling& fill, const Matrix& rows) {
  Matrix square(rows.rows(), rows.rows());
  for (Eigen::Index k = 0; k < rows.rows(); ++k) {
    square.col(k) = rows.col(static_cast<Eigen::Index>(fill.lost[k]));
  }
  return square;
}

/// One stratum's share: moves `weights` along the directions of `open` that its
/// residual can tell, and keeps the others in `open`.
int settle(const Filling& fill, const Matrix& residual, Matrix& open, Matrix& weights) {
  const Matrix square = at_lost(fill, residual);
  const Eigen::SelfAdjointEigenSolver<Matrix> parts(open.transpose() * square * open);
  const Matrix slope = residual + square * weights;
  Matrix still(open.rows(), 0);
  int settled = 0;
  for (Eigen::Index k = 0; k < parts.eigenvalues().size(); ++k) {
    const Eigen::VectorXd direction = open * parts.eigenvectors().col(k);
    if (parts.eigenvalues()[k] > kNothing) {
      weights -= direction * (direction.transpose() * slope) / parts.eigenvalues()[k];
      ++settled;
    } else {
      still.conservativeResize(Eigen::NoChange, still.cols() + 1);
      still.col(still.cols() - 1) = direction;
    }
  }
  open = still;
  return settled;
}

} // namespace

Filling filling(const Layout& layout, const std::vector<std::size_t>& lost, std::size_t without) {
  Filling fill{lost, {}, std::vector<int>(layout.strata.size(), 0), true};
  const std::size_t plots = layout.whole.of.size();
  const auto size = static_cast<Eigen::Index>(lost.size());
  Matrix weights = Matrix::Zero(size, static_cast<Eigen::Index>(plots));
  Matrix open = Matrix::Identity(size, size);
  for (std::size_t s = layout.strata.size(); s-- > 0 && open.cols() > 0;) {
    const Matrix residual =
        rows_of(fill, plots, [&](const Column& v) { return residual_of(layout, s, v, without); });
    fill.degrees[s] = settle(fill, residual, open, weights);
    const Matrix all =
        rows_of(fill, plots, [&](const Column& v) { return in_stratum(layout, s, v); });
    // A direction this stratum cannot tell must not look like a treatment in it.
    const Matrix left = open.transpose() * at_lost(fill, all) * open;
    fill.determined = fill.determined && (left.size() == 0 || left.diagonal().maxCoeff() < 1e-7);
  }
  fill.determined = fill.determined && open.cols() == 0;
  for (Eigen::Index i = 0; i < size; ++i) {
    fill.weights.emplace_back(plots);
    for (std::size_t k = 0; k < plots; ++k) {
      fill.weights.back()[k] = weights(i, static_cast<Eigen::Index>(k));
    }
    for (const std::size_t plot : lost) {
      fill.weights.back()[plot] = 0;
    }
  }
  return fill;
}

std::vector<std::size_t> lost_plots(const DesignedTrial& trial) {
  std::vector<std::size_t> lost;
  for (std::size_t i = 0; i < trial.y.size(); ++i) {
    if (!trial.y[i]) {
      lost.push_back(i);
    }
  }
  return lost;
}

Column given(const DesignedTrial& trial) {
  Column y;
  for (const auto& value : trial.y) {
    y.push_back(value.value_or(0));
  }
  return y;
}

units::Problem cannot_fill(const std::vector<std::size_t>& lost) {
  return {"cannot_fill", "y", std::to_string(lost.size()) + " lost plots",
          "absent on no more plots than the others can stand in for", ""};
}

Column filled(const Filling& filling, Column y) {
  for (std::size_t i = 0; i < filling.lost.size(); ++i) {
    long double value = 0;
    for (std::size_t k = 0; k < y.size(); ++k) {
      value += filling.weights[i][k] == 0 ? 0 : filling.weights[i][k] * y[k];
    }
    y[filling.lost[i]] = value;
  }
  return y;
}

} // namespace baize::stats::detail
