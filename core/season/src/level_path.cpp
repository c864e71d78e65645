#include "level_path.h"

#include "columns.h"

#include <algorithm>
#include <cmath>

namespace baize::season {
namespace {

/// What is left of the looks' means when all effects are taken off.
Eigen::VectorXd left_over(const Model& model, std::size_t green, const Draw& draw) {
  const GreenModel& one = model.greens[green];
  const Layout layout = layout_of(model, one);
  std::vector<double> rates;
  rates.reserve(one.losses.size());
  for (std::size_t k = 0; k < one.losses.size(); ++k) {
    rates.push_back(draw.rate(green, k, one.losses[k].method));
  }
  Eigen::VectorXd effects(layout.all() - 1);
  effects << draw.own[green], draw.shared.head(layout.shared());
  return without_effects(one, rates, effects);
}

} // namespace

LevelPaths::LevelPaths(const Model& model, std::size_t green, units::Period days)
    : model_(model), place_(green), green_(model.greens[green]), wanted_(days) {
  for (const Look& look : green_.looks) {
    days_.push_back(look.day);
  }
  for (units::Day day = std::max(days.first, green_.looks.front().day); day <= days.last; ++day) {
    days_.push_back(day);
  }
  std::sort(days_.begin(), days_.end());
  days_.erase(std::unique(days_.begin(), days_.end()), days_.end());
}

std::vector<LevelPaths::Filtered> LevelPaths::filter(const Draw& draw) const {
  const double walk = draw.parameters.level_walk * draw.parameters.level_walk;
  const double visit = draw.parameters.visit_sd * draw.parameters.visit_sd;
  const double roll = model_.roll_sd * model_.roll_sd;
  const Eigen::VectorXd left = left_over(model_, place_, draw);
  std::vector<Filtered> all(days_.size());
  double mean = 0;
  double variance = 0;
  std::size_t look = 0;
  for (std::size_t i = 0; i < days_.size(); ++i) {
    variance += i == 0 ? 0 : walk * (days_[i] - days_[i - 1]);
    for (; look < green_.looks.size() && green_.looks[look].day == days_[i]; ++look) {
      const double gain = variance / (variance + visit + roll / green_.looks[look].rolls);
      mean += gain * (left(static_cast<Eigen::Index>(look)) - mean);
      variance *= 1 - gain;
    }
    all[i] = {mean, variance};
  }
  return all;
}

void LevelPaths::walk_back(std::vector<double>& level, double start, double step,
                           stats::Random& random) const {
  const units::Day first = green_.looks.front().day;
  for (units::Day day = std::min(first - 1, wanted_.last); day >= wanted_.first; day = day - 1) {
    const bool next = wanted_.holds(day + 1);
    const double walked = next ? level[static_cast<std::size_t>(day + 1 - wanted_.first)] - start
                               : step * std::sqrt(first - day - 1.0) * random.normal();
    level[static_cast<std::size_t>(day - wanted_.first)] = start + walked + step * random.normal();
  }
}

std::vector<double> LevelPaths::draw(const Draw& draw, stats::Random& random) const {
  const double step = draw.parameters.level_walk;
  const double start =
      draw.own[place_](static_cast<Eigen::Index>(green_.losses.size() + green_.lines.size()));
  const std::vector<Filtered> filtered = filter(draw);
  std::vector<double> level(static_cast<std::size_t>(wanted_.days()), start);
  double walked = 0;
  // What lies before the days wanted is of no interest any more.
  for (std::size_t i = filtered.size(); i-- > 0 && days_[i] >= wanted_.first;) {
    double mean = filtered[i].mean;
    double variance = filtered[i].variance;
    if (i + 1 < filtered.size()) {
      const double between = step * step * (days_[i + 1] - days_[i]);
      const double gain = variance / (variance + between);
      mean += gain * (walked - mean);
      variance *= 1 - gain;
    }
    walked = mean + std::sqrt(variance) * random.normal();
    if (wanted_.holds(days_[i])) {
      level[static_cast<std::size_t>(days_[i] - wanted_.first)] = start + walked;
    }
  }
  walk_back(level, start, step, random);
  return level;
}

} // namespace baize::season
