#include "level_path.h"

#include "columns.h"

#include <algorithm>
#include <cmath>

namespace baize::season {
namespace {

/// The level's walk on one day, given the looks up to and with it.
struct Filtered {
  units::Day day;
  double mean = 0;
  double variance = 0;
};

/// What is left of the looks' means when all effects are taken off.
Eigen::VectorXd left_over(const Model& model, std::size_t green, const Draw& draw) {
  const Layout layout = layout_of(model, model.greens[green]);
  const Rows columns = look_columns(model, model.greens[green], draw.parameters);
  Eigen::VectorXd effects(layout.all() - 1);
  effects << draw.own[green], draw.shared.head(layout.shared());
  return columns.col(layout.all() - 1) - columns.leftCols(layout.all() - 1) * effects;
}

/// Days of looks and wanted days from the first look on.
std::vector<units::Day> days_of(const GreenModel& green, units::Period days) {
  std::vector<units::Day> all;
  for (const Look& look : green.looks) {
    all.push_back(look.day);
  }
  for (units::Day day = std::max(days.first, green.looks.front().day); day <= days.last; ++day) {
    all.push_back(day);
  }
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

std::vector<Filtered> filter(const Model& model, std::size_t green, const Draw& draw,
                             units::Period days) {
  const GreenModel& one = model.greens[green];
  const double walk = draw.parameters.level_walk * draw.parameters.level_walk;
  const double visit = draw.parameters.visit_sd * draw.parameters.visit_sd;
  const double roll = model.roll_sd * model.roll_sd;
  const Eigen::VectorXd left = left_over(model, green, draw);
  std::vector<Filtered> all;
  double mean = 0;
  double variance = 0;
  std::size_t look = 0;
  for (const units::Day day : days_of(one, days)) {
    variance += all.empty() ? 0 : walk * (day - all.back().day);
    for (; look < one.looks.size() && one.looks[look].day == day; ++look) {
      const double gain = variance / (variance + visit + roll / one.looks[look].rolls);
      mean += gain * (left(static_cast<Eigen::Index>(look)) - mean);
      variance *= 1 - gain;
    }
    all.push_back({day, mean, variance});
  }
  return all;
}

} // namespace

std::vector<double> draw_level(const Model& model, std::size_t green, const Draw& draw,
                               units::Period days, stats::Random& random) {
  const GreenModel& one = model.greens[green];
  const double step = draw.parameters.level_walk;
  const double start =
      draw.own[green](static_cast<Eigen::Index>(one.losses.size() + one.lines.size()));
  const std::vector<Filtered> filtered = filter(model, green, draw, days);
  std::vector<double> level(static_cast<std::size_t>(days.days()), start);
  double walked = 0;
  for (std::size_t i = filtered.size(); i-- > 0;) {
    double mean = filtered[i].mean;
    double variance = filtered[i].variance;
    if (i + 1 < filtered.size()) {
      const double between = step * step * (filtered[i + 1].day - filtered[i].day);
      const double gain = variance / (variance + between);
      mean += gain * (walked - mean);
      variance *= 1 - gain;
    }
    walked = mean + std::sqrt(variance) * random.normal();
    if (days.holds(filtered[i].day)) {
      level[static_cast<std::size_t>(filtered[i].day - days.first)] = start + walked;
    }
  }
  // Before the first look the walk runs backwards from it.
  for (units::Day day = std::min(one.looks.front().day - 1, days.last); day >= days.first;
       day = day - 1) {
    const bool next = days.holds(day + 1);
    walked = next ? level[static_cast<std::size_t>(day + 1 - days.first)] - start
                  : step * std::sqrt(one.looks.front().day - day - 1.0) * random.normal();
    level[static_cast<std::size_t>(day - days.first)] = start + walked + step * random.normal();
  }
  return level;
}

} // namespace baize::season
