#pragma once

#include "baize/recovery/series.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace baize::recovery {

/// What "back" means. Every number is printed with its definition.
enum class Definition {
  at_standard, ///< first day at the standard
  two_running, ///< first of two visited days running at the standard
  lasting,     ///< first day from which every visited day stays at the standard
  own_level    ///< first day back at its own score before the work
};
inline constexpr std::array kDefinitions{Definition::at_standard, Definition::two_running,
                                         Definition::lasting, Definition::own_level};

struct Options {
  int before_window_days = 21;   ///< score before: visited days in the window before the work
  double own_level_tolerance = 0; ///< own level counts as reached this far below
  climate::GrowthOptions growth = climate::kCoolSeason;
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Why no right end is known.
enum class Censoring {
  none,
  record_ends, ///< not yet back when the record ends
  next_work,   ///< not yet back when the next disruptive work began
  not_asked    ///< own level, with no score before
};

/// The half-open interval (after, by] that holds the day of recovery, as days
/// since the work. `by` is absent when censored. Growth-days are absent when a
/// day's temperature is missing.
struct RecoveryInterval {
  Definition definition = Definition::at_standard;
  Censoring censoring = Censoring::none;
  units::Day last_below;              ///< the work's own day where no visit was below
  std::optional<units::Day> first_back;
  int after_days = 0;
  std::optional<int> by_days;
  std::optional<double> after_growth_days;
  std::optional<double> by_growth_days;
  std::vector<std::string> visits; ///< the visits it rests on
};

/// Score points times days below the level before, from the work until the
/// score is back at its own level (or the record or the next work ends it).
/// Trapezoids between visited days; before the first visit its loss is held
/// back to the work. The bounds let every unvisited day be as good or as bad as
/// its neighbours allow; before the first visit the worst is a score of 1.
struct LossArea {
  double score_days = 0;
  double low = 0;
  double high = 0;
  std::optional<double> growth_score_days; ///< the same, each day weighted by its growth potential
  bool ended = true;                       ///< false: still below when the record or next work ends it
};

/// One disruptive work at one green or half, in plain figures.
struct WorkLoss {
  std::string work;
  std::string kind;
  std::string green;
  std::string half;
  units::Day day;
  units::Day horizon;                ///< last day that belongs to it
  Censoring horizon_reason = Censoring::record_ends;
  double standard = 8;               ///< on the work's day
  std::optional<double> before;      ///< absent: no score before, and none invented
  std::vector<std::string> before_visits;
  std::optional<double> trough;
  std::optional<units::Day> trough_day;
  std::optional<double> depth;       ///< before less trough, 0 at least
  std::array<RecoveryInterval, 4> recovery;
  std::optional<LossArea> area;      ///< absent where there is no score before or none after
  int visits_after = 0;
  std::vector<std::string> notes;    ///< sentences: "no score before", "no visit after" ...
};

/// Every disruptive work that touched the green, oldest first. `record_end` is
/// the last day that counts as known (usually today). Works after it are plans
/// and left out. A visit on the work's own day counts only where both carry a
/// time; else it is neither before nor after, and a note says so.
std::vector<WorkLoss> work_losses(const green::Records& records, const climate::Weather& weather,
                                  const std::string& green, units::Day record_end,
                                  const Options& options = {});

} // namespace baize::recovery
