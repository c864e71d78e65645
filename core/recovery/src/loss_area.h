#pragma once

#include "baize/recovery/work_loss.h"

#include <span>

namespace baize::recovery {

/// A visited day after the work: when, and how many points below the level before.
struct LossPoint {
  int days_after = 0;
  double loss = 0; ///< 0 at least
};

/// The area over the points, oldest first and at least one; `worst` is the loss
/// of a score of 1. Figures as LossArea describes them; `ended` is the caller's to say.
LossArea loss_area(std::span<const LossPoint> points, double worst);

/// The same with each day weighted by its growth potential; absent when a day
/// from the work's next day to the last point has no temperature.
std::optional<double> growth_weighted(std::span<const LossPoint> points, units::Day work,
                                      const climate::Weather& weather,
                                      const climate::GrowthOptions& options);

} // namespace baize::recovery
