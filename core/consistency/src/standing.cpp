#include "baize/consistency/standing.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace baize::consistency {
namespace {

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
    const double middle = median_of(std::move(figures));
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
  double sum = 0;
  for (const Compared& day : days) {
    found.mean += day.figure / static_cast<double>(days.size());
    differences.push_back(day.difference);
    sum += day.difference;
  }
  const auto n = static_cast<double>(days.size());
  found.difference = observers::by_session(
                         days.size(),
                         [&](std::optional<std::size_t> left_out) -> std::optional<double> {
                           return left_out ? (sum - differences[*left_out]) / (n - 1) : sum / n;
                         },
                         confidence)
                         .value_or(observers::Estimate{});
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

double median_of(std::vector<double> values) {
  if (values.empty()) {
    return std::numeric_limits<double>::quiet_NaN();
  }
  std::sort(values.begin(), values.end());
  const std::size_t half = values.size() / 2;
  return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
}

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
