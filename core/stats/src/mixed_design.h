#pragma once

#include "baize/stats/mixed.h"

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace baize::stats::detail {

/// A random term made ready: groups counted from 0, columns scaled to a mean
/// square of 1 so that the search moves in like units.
struct Grouping {
  int groups = 0;
  int columns = 0; ///< effects a group: constant and slopes
  bool correlated = true;
  int largest = 0;           ///< rows of the largest group
  std::vector<int> label;    ///< each group's number in the model, ascending
  std::vector<int> of_row;   ///< each row's group
  std::vector<double> z;     ///< row by row, `columns` numbers each
  std::vector<double> scale; ///< each column was divided by this
  int size() const { return groups * columns; }
  /// Entries of the relative Cholesky factor: a lower triangle, or its diagonal.
  int thetas() const { return correlated ? columns * (columns + 1) / 2 : columns; }
};

/// The model with the fixed columns made orthonormal and y cleared of them, so
/// that sums of squares lose no digits.
struct MixedDesign {
  Eigen::MatrixXd q;          ///< rows by fixed columns
  Eigen::VectorXd y;          ///< residuals of ordinary least squares / unit; squares add to rows
  Eigen::VectorXd from_fixed; ///< q' y, in units of y
  Eigen::MatrixXd back;       ///< coefficients = back * what belongs to q
  double log_det_back = 0;    ///< log |back|
  double unit = 1;
  std::vector<Grouping> terms; ///< the one with most effects first
  std::vector<int> place;      ///< terms[i] is the model's term place[i]
  int thetas() const;
};

std::optional<Summary> check_mixed(const MixedModel& model);
/// Degenerate where it cannot be made.
std::optional<Summary> make_design(const MixedModel& model, MixedDesign& design);

} // namespace baize::stats::detail
