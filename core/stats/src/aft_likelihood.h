#pragma once

#include "aft_term.h"

#include <Eigen/Core>

#include <vector>

namespace baize::stats::detail {

/// Times on a standard scale: w = rate y - x . ratio, where y = (log t - centre) /
/// unit has mean about 0 and spread about 1. A row is exact when low == high; low
/// is -infinity for left-, high is infinity for right-censored times.
struct StandardTimes {
  std::vector<double> low;
  std::vector<double> high;
  std::vector<double> count; ///< observations that a row stands for
  double centre = 0;
  double unit = 1;
  double jacobian = 0; ///< added to the log-likelihood: sum of -log t over exact times
};
StandardTimes standard_times(const std::vector<AftObservation>& observations);

/// Each different row of times and design once, with how many observations it stands
/// for: times come in whole days, so most of a thousand works share theirs with others.
struct DistinctRows {
  StandardTimes times;
  Eigen::MatrixXd design;
};
DistinctRows distinct_rows(const StandardTimes& times, const Eigen::MatrixXd& design);

struct AftSlopes {
  double value = 0;
  Eigen::VectorXd gradient;
  Eigen::MatrixXd information; ///< minus the second derivatives
};

/// The log-likelihood of ratios (coefficients / scale) and, last, the rate.
class AftLikelihood {
 public:
  /// Keeps references to both.
  AftLikelihood(const StandardTimes& times, const Eigen::MatrixXd& design,
                AftDistribution distribution);

  bool fixed_rate() const { return fixed_rate_; }
  /// With the rate, also where that is fixed.
  Eigen::Index size() const { return design_.cols() + 1; }
  /// Without the rate where that is fixed.
  AftSlopes slopes(const Eigen::VectorXd& at) const;
  /// The share of a step, at most 1, along which no end's w moves by more than 2 + |w|:
  /// the second derivatives here say nothing of what lies further off.
  double reach(const Eigen::VectorXd& at, const Eigen::VectorXd& move) const;
  /// One row of the gradient for each row of times, however many it stands for.
  Eigen::MatrixXd scores(const Eigen::VectorXd& at) const;

 private:
  AftRow row(Eigen::Index i) const;
  double count(Eigen::Index i) const;

  const StandardTimes& times_;
  const Eigen::MatrixXd& design_;
  AftDistribution distribution_;
  bool fixed_rate_;
};

} // namespace baize::stats::detail
