#pragma once

#include "baize/services/greens_review.h"

namespace baize::services {

/// `shares` are slices of `records` up to `today`, in walking order.
GreensReview greens_of(const green::Records& records, const std::vector<green::Records>& shares,
                       units::Day today);

} // namespace baize::services
