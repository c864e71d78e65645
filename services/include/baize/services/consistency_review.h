#pragma once

#include "baize/consistency/directions.h"
#include "baize/consistency/hours.h"
#include "baize/consistency/nested.h"
#include "baize/consistency/rank.h"
#include "baize/consistency/standing.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::services {

struct GreenConsistency {
  std::string green;
  std::string name;
  std::optional<consistency::GreenStanding> score;
  std::optional<consistency::GreenStanding> speed; ///< metres
  double standard = 8;                             ///< on the period's last day
  /// Its mean speed is at or above the greens' median, its mean score below the standard.
  bool fast_but_not_true = false;
};

struct SpotConsistency {
  std::string green;
  std::string name;
  consistency::SpotDirections directions;
  consistency::DirectionFinding finding = consistency::DirectionFinding::too_few;
};

/// A visit with both figures.
struct SpeedScore {
  std::string green;
  double speed_m = 0;
  double score = 0;
};

struct ConsistencyReview {
  std::string club;
  units::Period days;
  std::string sentence;
  int visits = 0; ///< shared balls once
  consistency::Nested score_parts;
  consistency::Nested speed_parts; ///< metres squared
  std::vector<GreenConsistency> greens;
  std::vector<SpotConsistency> spots;
  std::optional<consistency::RankCorrelation> speed_and_score;
  std::vector<SpeedScore> points;
  consistency::HourEffect hours;
};

/// The last 365 days up to `today` where no period is given. Never refuses: where
/// there is too little the parts are empty and the sentence says so.
ConsistencyReview consistency_review(const green::Records& records,
                                     const std::optional<units::Period>& days, units::Day today);

} // namespace baize::services
