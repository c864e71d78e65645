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

DrawnLosses::DrawnLosses(const GreenModel& green, const LossDays& losses, std::size_t place)
    : green_(green), losses_(losses), place_(place),
      lost_(losses.growth.rows(), losses.growth.cols()), seen_(losses.losses.size()) {}

void DrawnLosses::draw(const Draw& draw) {
  for (std::size_t j = 0; j < seen_.size(); ++j) {
    const std::size_t k = losses_.losses[j];
    const double depth = draw.own[place_](static_cast<Eigen::Index>(k));
    const double rate = draw.rate(place_, k, green_.losses[k].method);
    const Eigen::Index first = losses_.first[j];
    const auto growth = losses_.growth.col(static_cast<Eigen::Index>(j));
    const auto* over =
        std::upper_bound(growth.data() + first, growth.data() + growth.size(), kOver / rate);
    seen_[j] = over - growth.data() - first;
    lost_.col(static_cast<Eigen::Index>(j)).segment(first, seen_[j]) =
        depth * (-rate * growth.segment(first, seen_[j])).array().exp().matrix();
  }
}

void DrawnLosses::add_to(Eigen::MatrixXd& sums) const {
  for (std::size_t j = 0; j < seen_.size(); ++j) {
    const auto column = static_cast<Eigen::Index>(j);
    const Eigen::Index first = losses_.first[j];
    sums.col(column).segment(first, seen_[j]) += lost_.col(column).segment(first, seen_[j]);
  }
}

Eigen::VectorXd DrawnLosses::total(const Eigen::VectorXd& shares) const {
  Eigen::VectorXd total = Eigen::VectorXd::Zero(lost_.rows());
  for (std::size_t j = 0; j < seen_.size(); ++j) {
    const auto column = static_cast<Eigen::Index>(j);
    const Eigen::Index first = losses_.first[j];
    total.segment(first, seen_[j]) += shares(column) * lost_.col(column).segment(first, seen_[j]);
  }
  return total;
}

} // namespace baize::season
