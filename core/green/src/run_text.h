#pragma once

#include "baize/green/roll.h"

#include <string>

namespace baize::green {

/// "spot A out"; "out" where the spot has no name.
std::string run_text(const Run& run);
/// "spot A out roll 2".
std::string roll_text(const Run& run, const Roll& roll);

} // namespace baize::green
