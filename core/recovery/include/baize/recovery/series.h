#pragma once

#include "baize/climate/growth.h"
#include "baize/green/club.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::recovery {

/// One visit's figures, as the plain results use them. Scores are points, 1 to 10.
struct VisitScore {
  std::string visit;
  std::string observer;
  std::string shared_rolls; ///< visits with the same one are the same balls; empty: none
  units::Day day;
  std::optional<units::Minute> at; ///< its begin, else its end, where either was written down
  double score = 0;                ///< mean of its rolls
  double total = 0;                ///< their sum: a whole number, so sums of it are exact
  int rolls = 0;
  double lowest = 0; ///< lowest and highest roll (the run's mean where only its total is known)
  double highest = 0;
};

/// All scored visits of one day put together, each roll counting once. Days,
/// not visits, are what recovery and ledger count, so the order of visits and
/// the number of observers change nothing. Balls that several observers scored
/// apart (shared_rolls) count once: the mean of the observers' means, as heavy
/// as the rolls of the one who scored most of them.
struct DayScore {
  units::Day day;
  double score = 0;                ///< mean of the day's rolls
  double total = 0;                ///< score times rolls: a whole number where no balls were shared
  int rolls = 0;                   ///< balls
  std::vector<std::string> visits; ///< by time, then id; those without a time first
};

/// Scored visits of a green, by day, then time, then id. With a half, only runs
/// made in it: at a spot that lies in it, or at a spot of no stated half during
/// a visit of that half. Visits without a scored roll are left out, never zero.
std::vector<VisitScore> visit_scores(const green::Records& records, const std::string& green,
                                     const std::string& half = {});
/// One entry for each day that has a visit, oldest first. `visits` may stand in any order.
std::vector<DayScore> day_scores(const std::vector<VisitScore>& visits);

/// Is the score at or above the level? Both are means of whole numbers or were
/// written down by a person, so 1e-9 only forgives the last digit of arithmetic:
/// means of up to some thousand rolls that differ at all differ by far more.
inline bool reaches(double score, double level) {
  return score >= level - 1e-9;
}

} // namespace baize::recovery
