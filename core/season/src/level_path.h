#pragma once

#include "baize/season/fit.h"
#include "baize/stats/random.h"

namespace baize::season {

/// Random paths of a green's undisturbed level over some days, draw by draw.
class LevelPaths {
 public:
  LevelPaths(const Model& model, std::size_t green, units::Period days);
  /// One path, given a draw's effects: a value a day.
  std::vector<double> draw(const Draw& draw, stats::Random& random) const;

 private:
  /// The level's walk on one day, given the looks up to and with it.
  struct Filtered {
    double mean = 0;
    double variance = 0;
  };
  std::vector<Filtered> filter(const Draw& draw) const;
  /// Before the first look the walk runs backwards from it.
  void walk_back(std::vector<double>& level, double start, double step,
                 stats::Random& random) const;

  const Model& model_;
  std::size_t place_;
  const GreenModel& green_;
  units::Period wanted_;
  std::vector<units::Day> days_; ///< of looks and wanted ones from the first look on
};

} // namespace baize::season
