#pragma once

#include "baize/recovery/series.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace baize::recovery {

/// What "back" means, asked of the visited days after the work up to its
/// horizon. Every number is printed with its definition. "At the standard" is
/// at or above the standard of that very day: standards have seasons.
enum class Definition {
  at_standard, ///< first day at the standard
  two_running, ///< first of two visited days running at the standard
  lasting,     ///< first day from which every visited day stays at the standard
  own_level    ///< first day back at its own score before the work
};
inline constexpr std::array kDefinitions{Definition::at_standard, Definition::two_running,
                                         Definition::lasting, Definition::own_level};
/// The one that lists and sentences show where no other is asked for: in simulation
/// (docs/evidence/recovery_figures.md) it errs early and late most evenly. The first
/// day alone is often luck; lasting waits where one bad visit has other reasons.
inline constexpr Definition kHeadline = Definition::two_running;

struct Options {
  /// Score before: visited days in this many days before the work. 1 to 366.
  int before_window_days = 21;
  /// Own level counts as reached this many points below the score before. 0 to 9.
  double own_level_tolerance = 0;
  climate::GrowthOptions growth = climate::kCoolSeason;
  /// "before_window_out_of_range", "tolerance_out_of_range", or what the growth options say.
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Settings of the growth potential by the green's grass.
climate::GrowthOptions growth_options_for(green::Grass grass);

/// Why no right end is known.
enum class Censoring {
  none,
  record_ends, ///< not yet back when the record ends
  next_work,   ///< not yet back when the next disruptive work began
  not_asked    ///< own level, with no score before
};

/// The half-open interval (after, by] that holds the day of recovery, as days
/// since the work. `by` is absent when censored. `last_below` is the last visited
/// day below the standard (own level: below that) before `first_back`, or in all
/// when there is none. Both ends on the work's own day: a visit after the work,
/// that day, was already back. Growth-days are absent when a temperature is
/// missing. Intervals, because nobody looks every day; their width is their
/// uncertainty, and each further visit inside one can only narrow it.
struct RecoveryInterval {
  Definition definition = Definition::at_standard;
  Censoring censoring = Censoring::none;
  units::Day last_below; ///< the work's own day where no visit was below
  std::optional<units::Day> first_back;
  int after_days = 0;         ///< last_below less the work's day
  std::optional<int> by_days; ///< first_back less the work's day
  std::optional<double> after_growth_days;
  std::optional<double> by_growth_days;
  std::vector<int> gaps_below; ///< days between the visited days up to last_below
  /// `by_days`, had visits been missed only because the roll was good again (by_if_good
  /// in missed_visits.h, with the green's usual gap after all its works).
  std::optional<int> by_days_if_good;
  /// Of the days that set it: last below, first back, for two running the day
  /// after that, for lasting the last visited day.
  std::vector<std::string> visits;
};

/// Score points times days below the level before, from the work until the
/// score is back at its own level (or the record or the next work ends it).
/// Trapezoids between visited days; before the first visit its loss is held
/// back to the work. A day at its own level (within the tolerance) has no loss.
/// Where it has not ended, the three figures stop at the last visited day: what
/// came after is not known and not counted.
///
/// The bounds hold the trapezoids that visits on every day would have given,
/// were each of those days no better and no worse than its visited neighbours.
/// Before the first visit the neighbours are the level before and a score of 1.
/// low <= score_days <= high, and all are equal where every day was visited,
/// but for the half day after the work.
struct LossArea {
  double score_days = 0;
  double low = 0;
  double high = 0;
  std::optional<double>
      growth_score_days; ///< score_days, each day weighted by its growth potential
  bool ended = true;     ///< false: still below when the record or next work ends it
};

/// One disruptive work at one green or half, in plain figures. A work on a half
/// is read from that half's visits, and works on the whole green count as works
/// on it. Disruptive works of one day on one surface cannot be told apart: each
/// is given what was lost to all of them, and a note says so.
struct WorkLoss {
  std::string work;
  std::string kind;
  std::string green;
  std::string half;
  units::Day day;
  /// Last day that belongs to it: the record's end, or the day before the next
  /// disruptive work on any part of this surface.
  units::Day horizon;
  Censoring horizon_reason = Censoring::record_ends; ///< record_ends or next_work
  double standard = 8;                               ///< on the work's day
  /// Mean over the rolls of the visited days in the window before, which begins
  /// at the earliest the day after the last day of an earlier disruptive work,
  /// and of visits on the work's own day that came before it. Absent: no score
  /// before, and none invented.
  std::optional<double> before;
  std::vector<std::string> before_visits;
  /// Lowest day from the work until the score is back at its own level, the
  /// first one back counted in; without a score before, until at the standard.
  std::optional<double> trough;
  std::optional<units::Day> trough_day; ///< the first of such days
  std::optional<double>
      depth; ///< before less trough; 0 where it was never seen below its own level
  std::array<RecoveryInterval, 4> recovery; ///< in the order of kDefinitions
  std::optional<LossArea> area;             ///< absent where there is no score before or none after
  /// Back by kHeadline at the standard of that day, but not at the work's day's: the
  /// standard fell in between.
  bool back_at_lower_standard = false;
  int visits_after = 0;           ///< scored visits up to the horizon, not days
  std::vector<std::string> notes; ///< sentences: "No score before ...", "No visit after ..."

  const RecoveryInterval& under(Definition definition) const {
    return recovery[static_cast<std::size_t>(definition)];
  }
};

/// Every disruptive work that touched the green, oldest first. `record_end` is
/// the last day that counts as known (usually today). Works after it are plans
/// and left out, visits after it likewise. A visit on the work's own day counts
/// only where both carry a time and these differ; else it is neither before nor
/// after, and a note says so. With options that are not valid() nothing is
/// computed and the result is empty: ask problem() first. Sums run over whole
/// numbers or in the order of days, so that the order of the records changes no
/// byte of the result.
std::vector<WorkLoss> work_losses(const green::Records& records, const climate::Weather& weather,
                                  const std::string& green, units::Day record_end,
                                  const Options& options = {});

} // namespace baize::recovery
