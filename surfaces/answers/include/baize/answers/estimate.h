#pragma once

#include "baize/answers/json.h"
#include "baize/observers/estimate.h"

namespace baize::answers {

/// {value, se, low, high}; what is not known is left out.
Json estimate(const observers::Estimate& estimate);

} // namespace baize::answers
