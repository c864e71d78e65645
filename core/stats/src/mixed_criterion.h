#pragma once

#include "mixed_classes.h"
#include "mixed_rest.h"

#include <Eigen/Core>

#include <span>
#include <vector>

namespace baize::stats::detail {

/// What one choice of the relative Cholesky factors theta gives. With
/// V = I + Z T T' Z' the covariance of y over the residual variance:
struct MixedValue {
  double log_det = 0;          ///< log |V|
  double ss = 0;               ///< y' V^-1 y at the best coefficients
  Eigen::MatrixXd information; ///< q' V^-1 q
  Eigen::VectorXd best;        ///< coefficients of q
  bool finite = false;
};

/// Evaluates the profiled likelihood by a blocked Cholesky factorization of
/// T' Z'Z T + I: the term with most effects is a diagonal of small blocks; the
/// others follow as one matrix.
class MixedCriterion {
 public:
  MixedCriterion(const MixedDesign& design, bool restricted);
  const MixedDesign& design() const { return design_; }
  bool restricted() const { return restricted_; }
  /// What the likelihood divides the sum of squares by.
  double count() const;

  MixedValue value(const Eigen::VectorXd& theta);
  /// log |V|, with log |q' V^-1 q| where restricted.
  double log_dets(const MixedValue& value) const;
  /// -2 log likelihood of design().y at the best residual variance, without the
  /// constant; infinite where not finite.
  double profiled(const Eigen::VectorXd& theta);

  /// Effects of each term, and where asked their covariances over the residual
  /// variance, group by group. `value` is that of the theta evaluated last.
  struct Effects {
    std::vector<std::vector<double>> value;
    std::vector<std::vector<double>> covariance;
  };
  Effects effects(const MixedValue& value);

 private:
  void unpack(const Eigen::VectorXd& theta);
  double eliminate_first(Eigen::MatrixXd& cross);
  double solve_group(int group);
  void meet_others(int group);
  Eigen::MatrixXd through_rest(const Eigen::MatrixXd& part, std::span<const int> met,
                               const Eigen::MatrixXd& whole) const;
  Eigen::MatrixXd inverse_part(Eigen::Index first, Eigen::Index count,
                               const Eigen::MatrixXd& whole) const;
  void first_effects(const Eigen::VectorXd& coefficients, const Eigen::VectorXd& rest,
                     const Eigen::MatrixXd& whole, Effects& out) const;
  void other_effects(const Eigen::VectorXd& rest, const Eigen::MatrixXd& whole, Effects& out) const;

  const MixedDesign& design_;
  bool restricted_;
  MixedMoments moments_;
  Factors t_;
  std::vector<double> half_;      ///< room for a block
  std::vector<double> factor_;    ///< Cholesky factors of the first term's blocks
  std::vector<double> first_rhs_; ///< factor^-1 T' Z' [q y], group by group
  MixedRest rest_;
  MixedClasses classes_;
};

} // namespace baize::stats::detail
