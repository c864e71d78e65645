#pragma once

#include "mixed_rest.h"

#include <Eigen/Core>

#include <vector>

namespace baize::stats::detail {

/// Where every term has one effect a group: groups of the first term that weigh alike
/// put together, so that an evaluation makes their sums once. With u = z'z of a group, c
/// its products with the other terms' effects, r those with [q y], t the first term's
/// factor and D the others', the group takes
///   t^2 / (1 + t^2 u) [D c; r] [D c; r]'
/// away and adds log(1 + t^2 u) to the determinant: groups of one u, mostly those of
/// as many rows, add up to sums that depend on no theta.
class MixedClasses {
 public:
  /// Without classes (see any) where a term has more effects a group, the rest is sparse,
  /// or the sums are too many to keep.
  MixedClasses(const MixedDesign& design, const MixedMoments& moments, const MixedRest& rest);
  bool any() const { return u_.size() > 0; }

  /// Takes all groups' part from `cross`, which holds [q y]' [q y] (lower triangle), and
  /// from `rest`; gives what they add to the determinant's logarithm.
  double take(const Factors& t, Eigen::MatrixXd& cross, MixedRest& rest) const;

 private:
  struct Group;
  std::vector<Group> make_classes(const MixedMoments& moments, int groups);
  bool put_pairs(const std::vector<Group>& groups, const MixedRest& rest);
  void put_responses(const std::vector<Group>& groups, const MixedRest& rest);
  std::size_t pair_at(int row, int column) const;

  Eigen::Index size_ = 0;    ///< effects of the rest
  Eigen::Index columns_ = 0; ///< of [q y]
  Eigen::VectorXd u_;        ///< z'z of a group, class by class
  Eigen::VectorXd groups_;   ///< how many groups each class has
  /// The products c c', for each entry of the lower triangle, column after column, those of
  /// the classes that have any.
  std::vector<std::size_t> pair_start_; ///< of each entry; one more at the end
  std::vector<int> pair_class_;
  std::vector<double> pair_;
  Eigen::MatrixXd with_response_; ///< c r', one column a class
  Eigen::MatrixXd responses_;     ///< r r', likewise
};

} // namespace baize::stats::detail
