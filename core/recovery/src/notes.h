#pragma once

#include "disruption.h"
#include "intervals.h"

namespace baize::recovery {

/// What `loss_notes` looks at beside the figures themselves.
struct Circumstances {
  const green::Work* work = nullptr;
  const Disruption* same_day = nullptr; ///< the work and those of the same day
  const Disruption* next = nullptr;     ///< what ended its time, or none
  units::Day before_from;               ///< first day of the window before the work
  std::vector<std::string>
      unordered; ///< visits on the work's day that are neither before nor after
};

/// The sentences a reader needs beside the figures, in a fixed order.
std::vector<std::string> loss_notes(const WorkLoss& loss, const Aftermath& after,
                                    const Circumstances& around);
/// What the headline's interval would be, had visits been missed because the roll was good.
std::optional<std::string> missed_note(const WorkLoss& loss);

} // namespace baize::recovery
