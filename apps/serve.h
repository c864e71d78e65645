#pragma once

#include "baize/cli/ports.h"

namespace baize::apps {

/// Serves the pages and the interface until SIGINT or SIGTERM.
units::Result<void> serve(const cli::ServeSettings& settings, std::ostream& out);

} // namespace baize::apps
