#pragma once

#include "baize/season/fit.h"

namespace baize::season {

/// Adds to the fit's notes what its records cannot tell.
void put_notes(SeasonFit& fit);

} // namespace baize::season
