#pragma once

#include "baize/answers/json.h"

namespace baize::answers {

/// The data dictionary: kinds of works with their parameters, measured fields
/// with unit, range and how far to trust them, and the roll score's rule.
Json fields();

} // namespace baize::answers
