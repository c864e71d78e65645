#pragma once

#include "baize/green/club.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::recovery {

/// The disruptive works of one day on one surface. What each of them cost cannot
/// be told apart afterwards, so they begin, end and lose together.
struct Disruption {
  units::Day day;
  units::Day last;                     ///< latest last day of its works
  std::optional<units::Minute> begins; ///< earliest and latest time, only where all have one
  std::optional<units::Minute> ends;
  std::vector<const green::Work*> works; ///< by id
};

/// Disruptions that touched a green, or with a half that half (works on the whole
/// green touch each half; a work on one half touches the green). Oldest first;
/// works after `record_end` are plans and left out.
std::vector<Disruption> disruptions(const green::Records& records, const std::string& green,
                                    const std::string& half, units::Day record_end);

} // namespace baize::recovery
