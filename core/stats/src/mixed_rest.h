#pragma once

#include "mixed_moments.h"

#include <Eigen/Core>
#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>

#include <span>
#include <vector>

namespace baize::stats::detail {

/// Factors of all terms, each k by k, columns first.
using Factors = std::vector<std::vector<double>>;

/// All terms but the first: the matrix T' Z'Z T + I of their effects, what the
/// first term takes from it, and its Cholesky factor. Dense, unless it is large
/// and mostly 0.
class MixedRest {
 public:
  MixedRest(const MixedDesign& design, const MixedMoments& moments);
  Eigen::Index size() const { return size_; }

  void begin(const MixedMoments& moments, const Factors& t);
  /// Columns that a group of the first term meets, ascending.
  std::span<const int> met(int group) const;
  /// Room for the group's part: its rows by the columns met.
  double* part(int group) { return &parts_[part_at(group)]; }
  const double* part(int group) const { return &parts_[part_at(group)]; }
  /// Takes away part' part and part' rhs, where rhs are the group's rows of [q y].
  void subtract(int group, const double* rhs);
  /// The same of all groups together, of one effect each, before the other terms' factors:
  /// `pairs` is the lower triangle, column after column, `rhs` what goes with [q y].
  void subtract(const Eigen::VectorXd& pairs, const Eigen::MatrixXd& rhs, const Factors& t);
  /// Factors what is left; gives the logarithm of its determinant, NaN where it is
  /// not positive definite.
  double factor();

  /// factor^-1 of the columns, whose rows are the effects; and factor'^-1.
  Eigen::MatrixXd half(const Eigen::MatrixXd& columns) const;
  Eigen::MatrixXd back(const Eigen::MatrixXd& columns) const;
  /// The inverse of what was factored; only where dense.
  Eigen::MatrixXd inverse() const;
  bool dense() const { return dense_; }
  const Eigen::MatrixXd& rhs() const { return rhs_; } ///< T' Z' [q y], less the first term's part
  Eigen::Index offset(int term) const { return offset_[static_cast<std::size_t>(term)]; }

 private:
  /// Puts a group's row and its rhs into `crowded_` and `crowded_rhs_`.
  void put_aside(int group, const double* part, const double* rhs);
  std::size_t part_at(int group) const {
    return static_cast<std::size_t>(met_start_[static_cast<std::size_t>(group)]) * rows_;
  }
  void list_met(const MixedMoments& moments, int groups);
  void make_pattern();
  void add_cross(const Cross& cross, const Factors& t, int a, int b);
  double& entry(Eigen::Index row, Eigen::Index column);

  int rows_ = 0; ///< effects of a group of the first term
  int terms_ = 0;
  Eigen::Index size_ = 0;
  std::vector<Eigen::Index> offset_; ///< of each term's effects; of the first: not used
  std::vector<int> met_start_;
  std::vector<int> met_;
  std::vector<double> parts_;
  bool dense_ = true;
  bool many_met_ = false; ///< whether groups of one effect meet most columns
  /// What these take away, a group to a column, to be taken away at once; else empty.
  Eigen::MatrixXd crowded_;
  Eigen::MatrixXd crowded_rhs_; ///< their rows of [q y], a group to a row
  Eigen::MatrixXd matrix_;      ///< lower triangle; its factor after factor()
  Eigen::SparseMatrix<double> sparse_;
  Eigen::SimplicialLLT<Eigen::SparseMatrix<double>, Eigen::Lower> sparse_factor_;
  Eigen::MatrixXd rhs_;
};

} // namespace baize::stats::detail
