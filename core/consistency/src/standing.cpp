#include "baize/consistency/standing.h"

#include "baize/stats/descriptive.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace baize::consistency {
namespace {

double median_of(const std::vector<double>& values) {
  return stats::quantile(values, 0.5).value;
}

constexpr std::size_t kLeastGreens = 3; ///< of a day, and others to compare with
constexpr double kOutOfLine = 3.5;

struct Mean {
  double sum = 0;
  int n = 0;
  double value() const { return sum / n; }
};

using Days = std::map<units::Day, std::map<std::size_t, Mean>>; ///< by day and green

Days days_of(const std::vector<VisitFigures>& visits, Quantity quantity) {
  Days days;
  for (const VisitFigures& visit : visits) {
    const auto& value = quantity == Quantity::score ? visit.score : visit.speed_m;
    if (value) {
      Mean& mean = days[visit.day][visit.green];
      mean.sum += *value;
      ++mean.n;
    }
  }
  return days;
}

/// A green's figure on a day and its difference from the day's median.
struct Compared {
  double figure = 0;
  double difference = 0;
};

std::map<std::size_t, std::vector<Compared>> compared(const Days& days) {
  std::map<std::size_t, std::vector<Compared>> greens;
  for (const auto& [day, of_day] : days) {
    if (of_day.size() < kLeastGreens) {
      continue;
    }
    std::vector<double> figures;
    for (const auto& [green, mean] : of_day) {
      figures.push_back(mean.value());
    }
    const double middle = median_of(figures);
    for (const auto& [green, mean] : of_day) {
      greens[green].push_back({mean.value(), mean.value() - middle});
    }
  }
  return greens;
}

GreenStanding standing(std::size_t green, const std::vector<Compared>& days, double confidence) {
  GreenStanding found;
  found.green = green;
  found.days = static_cast<int>(days.size());
  std::vector<double> differences;
  std::vector<observers::Sums> sums(days.size());
  for (std::size_t i = 0; i < days.size(); ++i) {
    found.mean += days[i].figure / static_cast<double>(days.size());
    differences.push_back(days[i].difference);
    sums[i].add(days[i].difference);
  }
  found.difference = observers::mean_by_session(sums, confidence).value_or(observers::Estimate{});
  found.level = median_of(differences);
  return found;
}

void mark_out_of_line(std::vector<GreenStanding>& all) {
  constexpr std::size_t kLeast = 4;
  if (all.size() < kLeast) {
    return;
  }
  std::vector<double> levels;
  levels.reserve(all.size());
  for (const GreenStanding& one : all) {
    levels.push_back(one.level);
  }
  const double middle = median_of(levels);
  for (double& level : levels) {
    level = std::fabs(level - middle);
  }
  const double mad = median_of(levels);
  constexpr double kNothing = 1e-9;
  if (mad < kNothing) {
    return;
  }
  constexpr double kNormal = 0.6745; // the upper quartile of the standard normal
  for (GreenStanding& one : all) {
    one.robust_z = kNormal * (one.level - middle) / mad;
    one.out_of_line = std::fabs(*one.robust_z) > kOutOfLine;
  }
}

} // namespace

std::vector<GreenStanding> standings(const std::vector<VisitFigures>& visits, Quantity quantity,
                                     double confidence) {
  std::vector<GreenStanding> all;
  for (const auto& [green, days] : compared(days_of(visits, quantity))) {
    all.push_back(standing(green, days, confidence));
  }
  mark_out_of_line(all);
  return all;
}

} // namespace baize::consistency
