#pragma once

#include "baize/green/club.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::services {

/// What was found at a green when it was last scored.
struct LastSeen {
  units::Day day;
  std::optional<double> score_mean;
  std::optional<double> speed_m;
  std::string spot; ///< of its first run; empty where it has no name
};

struct FieldGreen {
  green::Green green;
  std::optional<LastSeen> last;
};

/// What a phone needs to work for weeks without a network.
struct FieldKit {
  green::Club club;
  std::vector<FieldGreen> greens; ///< in walking order
  std::vector<green::Observer> observers;
  std::vector<green::Standard> standards;
  /// Works done today, or under way: what an observer should know before the first roll.
  std::vector<green::Work> works_today;
};

FieldKit field_kit(const green::Records& records, units::Day today);

} // namespace baize::services
