#pragma once

#include "baize/season/fit.h"
#include "baize/stats/random.h"

namespace baize::season {

/// Days on which a green's level is wanted, all from `first`, one after another.
/// Draws one path of the undisturbed level over them, given a draw's effects.
std::vector<double> draw_level(const Model& model, std::size_t green, const Draw& draw,
                               units::Period days, stats::Random& random);

} // namespace baize::season
