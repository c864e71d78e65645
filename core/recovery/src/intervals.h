#pragma once

#include "baize/recovery/work_loss.h"

#include <array>

namespace baize::recovery {

/// What the recovery of one work is read from.
struct Aftermath {
  units::Day work;                 ///< the work's own day
  std::vector<DayScore> days;      ///< visited days after the work, up to the horizon
  std::vector<bool> true_day;      ///< each of them at the standard of its day?
  std::optional<double> own_level; ///< score that counts as back; absent: no score before
  Censoring horizon_reason = Censoring::record_ends;
};

/// Place in `days` of the first day back under a definition, or days.size().
std::size_t first_back(const Aftermath& after, Definition definition);

/// All four definitions, in the order of kDefinitions.
std::array<RecoveryInterval, 4> recovery_intervals(const Aftermath& after,
                                                   const climate::Weather& weather,
                                                   const climate::GrowthOptions& growth);

} // namespace baize::recovery
