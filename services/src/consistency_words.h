#pragma once

#include "baize/services/consistency_review.h"

namespace baize::services {

/// Which greens are out of line, where the score's variation lies, which greens are
/// fast and not true.
std::string consistency_sentence(const ConsistencyReview& review);

} // namespace baize::services
