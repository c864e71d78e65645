// The local level: do the levels' intervals hold them, with variances known and
// with variances estimated from the same readings?
#include "baize/stats/local_level.h"

#include "baize/stats/random.h"
#include "studies.h"

#include <fmt/format.h>

#include <cmath>

namespace baize::evidence {
namespace {

constexpr stats::LocalLevelVariances kTruth{0.09, 0.0016};

void rows(int worlds, int every, Table& table) {
  Coverage known;
  Coverage fitted;
  for (int world = 0; world < worlds; ++world) {
    stats::Random chance(301, static_cast<std::uint64_t>(world));
    std::vector<stats::LevelReading> readings;
    double level = 8;
    double middle = 0;
    for (int day = 0; day <= 180; ++day) {
      level += std::sqrt(kTruth.level_per_day) * chance.normal();
      const bool seen = day % every == 0;
      const double value = level + std::sqrt(kTruth.noise) * chance.normal();
      if (seen || day == 90) {
        readings.push_back(
            {static_cast<double>(day), seen ? std::optional(value) : std::nullopt, 1});
      }
      middle = day == 90 ? level : middle;
    }
    const auto add = [&](const stats::LocalLevelFit& fit, Coverage& coverage) {
      if (!fit.summary.usable) {
        coverage.refuse();
        return;
      }
      for (const stats::LevelEstimate& one : fit.levels) {
        if (one.day == 90) {
          coverage.add(
              middle, one.level,
              {one.level - 1.96 * one.standard_error, one.level + 1.96 * one.standard_error});
        }
      }
    };
    add(stats::smooth_local_level(readings, kTruth), known);
    add(stats::fit_local_level(readings), fitted);
  }
  table.rows.push_back(known.row(fmt::format("a reading every {} days, variances known", every)));
  table.rows.push_back(
      fitted.row(fmt::format("a reading every {} days, variances estimated", every)));
}

} // namespace

Study local_level(int worlds) {
  Study study{"local_level",
              "The level behind scattered readings",
              "A level walks for 180 days by a standard deviation of 0.04 points a day and is "
              "read with an error of 0.3. Asked is the level of day 90. The interval takes the "
              "variances for known: where they are estimated from few readings it is too short, "
              "which is why the season model draws them anew for every interval.",
              {},
              {}};
  Table table{"Coverage", Coverage::header("readings"), {}};
  for (const int every : {1, 2, 4, 7, 14}) {
    rows(worlds, every, table);
  }
  study.tables.push_back(std::move(table));
  study.findings = {
      "With variances known the interval is right. With variances estimated from the same few "
      "readings it is too short: do not quote it alone for a green read once a week."};
  return study;
}

} // namespace baize::evidence
