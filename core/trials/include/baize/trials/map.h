#pragma once

#include "baize/trials/plan.h"

namespace baize::trials {

/// The plots as they lie, block by block, in letters: number and treatment in each
/// cell, and the place in the first walk.
std::string map_text(const Plan& plan);

/// The same as an SVG picture, in user units, readable in black and white: each
/// treatment has its own tint and its name; the first walk is a thin line. Texts
/// are escaped. Blocks on one green stand together.
std::string map_svg(const Plan& plan);

/// Text that may stand inside SVG and HTML, also between double quotes; control
/// characters become blanks.
std::string escaped(const std::string& text);

} // namespace baize::trials
