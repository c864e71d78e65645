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

/// Points lost by day and loss on the losses' own surfaces, in one draw.
Eigen::MatrixXd draw_losses(const GreenModel& green, const LossDays& losses, std::size_t place,
                            const Draw& draw);

} // namespace baize::season
