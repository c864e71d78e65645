#pragma once

#include "baize/green/club.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::observers {

/// One ball, or the mean of a run's balls, as each observer scored it.
struct SharedItem {
  std::size_t session = 0; ///< place in SharedTable::sessions
  std::string spot;
  green::Direction direction = green::Direction::out;
  int order = 0; ///< of the ball; 0: the whole run
  int balls = 1;
  std::vector<std::optional<double>> scores; ///< by place in SharedTable::observers
};

/// Visits whose balls are the same: one stop of a shared walk.
struct Session {
  std::string shared_rolls;
  units::Day day;
  std::string green;
  std::string half;
  std::vector<std::string> visits; ///< ids, in the observers' order
};

/// What several observers scored apart. Single balls where each was scored by
/// two or more; runs always, so that an observer who writes only totals takes part.
struct SharedTable {
  std::vector<std::string> observers; ///< in the club's order, then by id
  std::vector<Session> sessions;      ///< by day, then id
  std::vector<SharedItem> rolls;
  std::vector<SharedItem> runs;
  int waiting = 0; ///< visits whose shared rolls nobody else has scored
};

/// Visits up to `today`. A run counts for those observers who scored most of its
/// balls, so that means are of the same balls. Records that break the rules of
/// shared rolls (two days, one observer twice) are not matched and refuse nothing.
SharedTable shared_table(const green::Records& records, units::Day today);

} // namespace baize::observers
