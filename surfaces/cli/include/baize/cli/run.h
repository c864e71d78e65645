#pragma once

#include "baize/cli/ports.h"

#include <iosfwd>

namespace baize::cli {

/// What the program tells the shell. Documented in docs/howto/command_line.md.
enum class Exit {
  fine = 0,
  data_problem = 1, ///< a value or file breaks a rule; nothing was kept
  wrong_use = 2,    ///< the command line itself is wrong
  storage = 3,      ///< file, disk, database or server trouble
  not_found = 4,    ///< no such club, green, work, year or file
  stopped = 130     ///< by Ctrl-C: nothing was kept, no result
};

/// Runs one command line. Results go to `out`, refusals and progress to `err`.
/// Never throws. Same ports, same arguments, same bytes.
int run(int argc, const char* const* argv, const Ports& ports, std::ostream& out,
        std::ostream& err);

} // namespace baize::cli
