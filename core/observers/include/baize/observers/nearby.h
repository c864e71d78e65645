#pragma once

#include "baize/green/club.h"
#include "baize/observers/estimate.h"
#include "baize/stats/summary.h"

#include <string>
#include <vector>

namespace baize::observers {

struct NearbyOptions {
  int days = 2;             ///< at most between the two visits, 0 to 14
  double confidence = 0.95; ///< above 0 and below 1
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Two observers at one green within days, not over the same balls: the green's
/// own change and other spots are in the difference, so this is weaker evidence.
struct NearbyPair {
  std::string first;
  std::string second;
  int pairs = 0;  ///< of visits
  int greens = 0; ///< that they lie on; the interval leaves out one green at a time
  Estimate bias;  ///< mean of first - second, visits' mean scores
  double sd = 0;  ///< of one difference
};

/// Every pair of observers with a pair of visits, in the club's order. Each visit
/// serves once for a pair of observers, the nearest in days first. Shared rolls and
/// visits with a disruptive work between or on either day are left out. Empty where
/// the options are not valid.
/// Common practice, no source.
std::vector<NearbyPair> nearby_pairs(const green::Records& records, units::Day today,
                                     const NearbyOptions& options = {});

} // namespace baize::observers
