#include "draw_losses.h"

#include <cmath>

namespace baize::season {
namespace {
constexpr int kOverAfter = 365; ///< days after which a loss no longer counts as seen
}

LossDays loss_days(const Model& model, std::size_t green, units::Period days) {
  const GreenModel& one = model.greens[green];
  const GrowthCurve& curve = model.curves[one.curve];
  LossDays found{days, {}, {}};
  for (std::size_t k = 0; k < one.losses.size(); ++k) {
    if (one.losses[k].day <= days.last && days.first - one.losses[k].last <= kOverAfter) {
      found.losses.push_back(k);
    }
  }
  found.growth.resize(days.days(), static_cast<Eigen::Index>(found.losses.size()));
  for (std::size_t j = 0; j < found.losses.size(); ++j) {
    const Loss& loss = one.losses[found.losses[j]];
    for (int i = 0; i < days.days(); ++i) {
      const units::Day day = days.first + i;
      found.growth(i, static_cast<Eigen::Index>(j)) =
          day < loss.day ? -1 : curve.between(loss.last, day);
    }
  }
  return found;
}

Eigen::MatrixXd draw_losses(const GreenModel& green, const LossDays& losses, std::size_t place,
                            const Draw& draw) {
  Eigen::MatrixXd lost = Eigen::MatrixXd::Zero(losses.growth.rows(), losses.growth.cols());
  for (Eigen::Index j = 0; j < lost.cols(); ++j) {
    const std::size_t k = losses.losses[static_cast<std::size_t>(j)];
    const double depth = draw.own[place](static_cast<Eigen::Index>(k));
    const double rate = draw.parameters.rate[green.losses[k].method];
    for (Eigen::Index i = 0; i < lost.rows(); ++i) {
      const double growth = losses.growth(i, j);
      lost(i, j) = growth < 0 ? 0 : depth * std::exp(-rate * growth);
    }
  }
  return lost;
}

} // namespace baize::season
