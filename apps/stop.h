#pragma once

namespace baize::apps {

/// Whether Ctrl-C was pressed since the first call. From that call on the first
/// Ctrl-C is only noted; a second ends the program as ever.
bool asked_to_stop();

} // namespace baize::apps
