#pragma once

#include "baize/season/fit.h"

namespace baize::season {

/// Growth-days since each of some losses, day by day; below 0 before it came.
struct LossDays {
  units::Period days;
  std::vector<std::size_t> losses; ///< places in GreenModel::losses
  std::vector<Eigen::Index> first; ///< first day that each is there
  Eigen::MatrixXd growth;          ///< days by losses
};

/// Losses of the green that any of the days sees (older ones than a year are over).
LossDays loss_days(const Model& model, std::size_t green, units::Period days);

/// Points lost by day and loss on the losses' own surfaces, in one draw: of each loss the
/// days from its first on until nothing is left of it. Made anew by each draw in the
/// same room.
class DrawnLosses {
 public:
  DrawnLosses(const GreenModel& green, const LossDays& losses, std::size_t place);

  void draw(const Draw& draw);
  /// Adds what the draw took off to sums of the same shape.
  void add_to(Eigen::MatrixXd& sums) const;
  /// Points lost by day on a surface that has these shares of the losses.
  Eigen::VectorXd total(const Eigen::VectorXd& shares) const;

 private:
  const GreenModel& green_;
  const LossDays& losses_;
  std::size_t place_;
  Eigen::MatrixXd lost_;           ///< days by losses; only the seen days are of this draw
  std::vector<Eigen::Index> seen_; ///< days of each loss
};

} // namespace baize::season
