#pragma once

#include "baize/services/season_review.h"

namespace baize::services {

/// The season of the only green of a slice. `period` is the year cut at `today`.
SeasonReview season_of(const green::Records& slice, const climate::Weather& weather,
                       units::Period period, units::Day today);
/// Losses of every disruptive work at the only green of a slice.
std::vector<recovery::WorkLoss> losses_of(const green::Records& slice,
                                          const climate::Weather& weather, units::Day today);
/// The year cut at `today`; refuses as season_review does.
units::Result<units::Period> period_of(int year, units::Day today);

} // namespace baize::services
