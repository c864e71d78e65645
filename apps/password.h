#pragma once

#include "baize/units/problem.h"

#include <string>

namespace baize::apps {

/// Asks for a new password on the terminal, twice, without showing it; with
/// `from_input` one line of the standard input. Refuses "no_password" where there
/// is no terminal or no line, "passwords_differ".
units::Result<std::string> read_password(bool from_input);

} // namespace baize::apps
