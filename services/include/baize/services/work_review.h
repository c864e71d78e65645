#pragma once

#include "baize/services/season_review.h"

namespace baize::services {

/// A scored day before or after the work.
struct WorkDay {
  units::Day day;
  int days_after = 0; ///< negative before
  double score = 0;
  int rolls = 0;
  std::vector<std::string> visits;
  double standard = 8; ///< of that day; it may differ from the work's own day
};

/// One disruptive work at one green (and half).
struct WorkAtGreen {
  std::string green_name;
  recovery::WorkLoss loss;
  std::vector<WorkDay> days; ///< from the before-window to the horizon
};

struct WorkReview {
  std::string club;
  green::Work work;
  std::string label;
  green::WorkClass work_class = green::WorkClass::disruptive;
  std::vector<WorkAtGreen> greens;
  std::string sentence; ///< "On 16 greens the score fell by 2.4 ... " in plain words
};

/// Refuses "no_such_work".
units::Result<WorkReview> work_review(const green::Records& records,
                                      const climate::Weather& weather, const std::string& work,
                                      units::Day today);

/// A line of the list of works.
struct WorkLine {
  green::Work work;
  std::string label;
  green::WorkClass work_class = green::WorkClass::routine;
  int greens = 0;
  std::optional<double> mean_depth;   ///< over its greens that have a before and an after
  std::optional<int> back_after_days; ///< over the greens that are back: least last-below ...
  std::optional<int> back_by_days;    ///< ... to most first-back
  int back = 0;                       ///< greens back to stay
  int back_at_lower_standard = 0;     ///< of these, only since the standard fell
  int censored = 0;                   ///< greens with no known right end
  std::optional<double> mean_score_days;
  /// Greens still below when their record or the next work ended the count: above
  /// 0 the mean is a least.
  int losses_open = 0;
};
/// Every work up to `today` and every plan after it, newest first. Plans and
/// routine works carry no figures.
std::vector<WorkLine> work_lines(const green::Records& records, const climate::Weather& weather,
                                 units::Day today);

} // namespace baize::services
