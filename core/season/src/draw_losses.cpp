#include "draw_losses.h"

#include "columns.h"

#include <algorithm>

namespace baize::season {
namespace {
constexpr int kOverAfter = 365; ///< days after which a loss no longer counts as seen
}

LossDays loss_days(const Model& model, std::size_t green, units::Period days) {
  const GreenModel& one = model.greens[green];
  const GrowthCurve& curve = model.curves[one.curve];
  LossDays found{days, {}, {}, {}};
  for (std::size_t k = 0; k < one.losses.size(); ++k) {
    if (one.losses[k].day <= days.last && days.first - one.losses[k].last <= kOverAfter) {
      found.losses.push_back(k);
    }
  }
  found.growth.resize(days.days(), static_cast<Eigen::Index>(found.losses.size()));
  for (std::size_t j = 0; j < found.losses.size(); ++j) {
    const Loss& loss = one.losses[found.losses[j]];
    found.first.push_back(std::clamp(loss.day - days.first, 0, days.days()));
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
    const double rate = draw.rate(place, k, green.losses[k].method);
    const Eigen::Index first = losses.first[static_cast<std::size_t>(j)];
    const auto growth = losses.growth.col(j);
    const auto* over =
        std::upper_bound(growth.data() + first, growth.data() + growth.size(), kOver / rate);
    const Eigen::Index days = over - growth.data() - first;
    lost.col(j).segment(first, days) =
        depth * (-rate * growth.segment(first, days)).array().exp().matrix();
  }
  return lost;
}

} // namespace baize::season
