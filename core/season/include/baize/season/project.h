#pragma once

#include "baize/season/fit.h"

#include <optional>

namespace baize::season {

/// One day of a green as the model sees it: what an observer who scores as the
/// mean of all would give in the morning, before play.
struct DayEstimate {
  units::Day day;
  bool to_come = false; ///< after the record's end: growth is normal for the day of the year
  bool closed = false;
  double standard = 8;
  double score = 0; ///< points, with its 95 % interval; never outside 1 to 10
  double score_low = 0;
  double score_high = 0;
  double undisturbed = 0; ///< without any loss, likewise
  double undisturbed_low = 0;
  double undisturbed_high = 0;
  double chance = 0;          ///< that the level is at or above the standard, 0 to 1
  std::vector<double> losses; ///< points, in the order of GreenYear::works
};

/// When something comes back, in days after a start. Absent where that share of
/// the draws has not come back by the end of what was followed.
struct Return {
  std::optional<int> median;
  std::optional<int> low; ///< 2.5 % of the draws are back by then
  std::optional<int> high;
  double share = 0; ///< of the draws that come back at all
  int followed = 0; ///< days
};

struct WorkEstimate {
  Loss loss;
  Estimate depth;            ///< points on its own surface
  Estimate rate;             ///< per growth-day or calendar day
  Estimate half_life;        ///< growth-days or calendar days
  Estimate score_days;       ///< sum of the loss over all days, also those to come
  Estimate growth_days_back; ///< growth-days until the loss is within the tolerance
  Return within_tolerance;   ///< days from the work until the loss is
  Return at_standard;        ///< days from the work until the level is at the standard
};

/// A green (or half) over a period, and beyond the record's end as a forecast.
struct GreenYear {
  stats::Summary summary;
  std::string green;
  std::string half;
  std::vector<DayEstimate> days;
  std::vector<WorkEstimate> works; ///< of losses that the period sees, oldest first
  int open_days = 0;               ///< of the period, up to the record's end, not closed
  Estimate true_days;              ///< of them: days at or above the standard
  double average_play = 0;         ///< points that a whole day's mean lies below the morning
  /// Days from the record's end until at the standard; absent where it is there.
  std::optional<Return> forecast;
  std::vector<std::string> notes;
};

struct ProjectOptions {
  int forecast_days = 60; ///< reported after the record's end where the period holds it; 0 to 200
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Every draw of the fit gets a random path of the level given its effects (forward
/// filter, backward sampling: Carter CK, Kohn R (1994) Biometrika 81:541-553), so
/// that counts of days and dates of return have honest intervals. Estimates stand
/// beside the measured ledger and never replace it. `records` gives standards and
/// closings. Refuses "no_such_green" (also one that the model left out), and
/// ProjectOptions::problem.
GreenYear project(const SeasonFit& fit, const green::Records& records, const std::string& green,
                  const std::string& half, units::Period period,
                  const ProjectOptions& options = {});

} // namespace baize::season
