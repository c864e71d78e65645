#pragma once

#include "baize/recovery/work_loss.h"
#include "baize/stats/censored_time.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::compare {

/// What one work cost at one green or half: a look at the work.
struct Look {
  std::string method;
  std::string club;
  std::string green;
  std::string half;
  std::vector<std::string> works; ///< more than one: of one day, cannot be told apart
  units::Day day;
  stats::CensoredTime days; ///< until back, since the work; (0, n]: never seen below
  /// `days`, had visits been missed only because the roll was good again; absent where
  /// none were missed, or what is usual is not known (recovery/missed_visits.h).
  std::optional<stats::CensoredTime> days_if_good;
  /// Absent where a temperature is missing on the way.
  std::optional<stats::CensoredTime> growth_days;
  recovery::Censoring censoring = recovery::Censoring::none;
  std::optional<double> before;
  std::optional<double> depth;
  std::optional<double> score_days;
  bool score_days_ended = true; ///< false: score_days is a least
  std::optional<double> growth; ///< mean growth potential of a day in the weeks after
  bool warm_grass = false;
  bool randomised = false; ///< a trial gave this green its method by lot
};

} // namespace baize::compare
