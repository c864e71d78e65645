#pragma once

#include "baize/units/problem.h"

#include <optional>
#include <string>

namespace baize::certificates {

/// The text of a file; absent: it cannot be read.
std::optional<std::string> text_of(const std::string& path);
bool exists(const std::string& path);
/// May its owner only read it?
bool is_private(const std::string& path);
/// Writes a file of mode 0600 that is whole under its name or not there, in a
/// folder that is made where needed. With `first` a file that another program has
/// put there meanwhile is left. Refuses "folder_unwritable".
units::Result<void> write_private(const std::string& path, const std::string& text, bool first);

} // namespace baize::certificates
