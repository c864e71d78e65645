#pragma once

#include "baize/answers/json.h"
#include "baize/speed/green_speed.h"

namespace baize::answers {

/// Lengths in metres.
Json to_json(const speed::VisitSpeed& speed);
/// In steps: both directions, plain mean, slope correction.
Json to_json(const speed::SpotSpeed& speed);

} // namespace baize::answers
