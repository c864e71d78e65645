#pragma once

#include "baize/climate/growth.h"
#include "baize/green/club.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::recovery {

/// One visit's figures, as the plain results use them.
struct VisitScore {
  std::string visit;
  std::string observer;
  units::Day day;
  std::optional<units::Minute> at;
  double score = 0; ///< mean of its rolls
  int rolls = 0;
  double lowest = 0; ///< lowest and highest roll (the mean twice where only a total is known)
  double highest = 0;
};

/// All scored visits of one day put together, each roll counting once. Days,
/// not visits, are what recovery and ledger count, so the order of visits and
/// the number of observers change nothing.
struct DayScore {
  units::Day day;
  double score = 0;
  int rolls = 0;
  std::vector<std::string> visits;
};

/// Scored visits of a green (and half: those made in it and, for a whole-green
/// spot, none other), by day, then time, then id.
std::vector<VisitScore> visit_scores(const green::Records& records, const std::string& green,
                                     const std::string& half = {});
std::vector<DayScore> day_scores(const std::vector<VisitScore>& visits);

} // namespace baize::recovery
