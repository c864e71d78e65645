#pragma once

#include "baize/services/store_port.h"
#include "baize/units/problem.h"

#include <string>
#include <vector>

namespace baize::cli {

/// Refuses "no_such_file" and "file_unreadable".
units::Result<std::string> read_file(const std::string& path);
/// Writes to a temporary name beside it and renames, so that a reader sees the
/// old file or the new one. Refuses "file_unwritable".
units::Result<void> write_file(const std::string& path, const std::string& content);
/// The .csv files of a folder, by name, or the file itself.
units::Result<std::vector<std::string>> files_of(const std::string& path);
std::string bare_name(const std::string& path);
bool same_file(const std::string& a, const std::string& b);

} // namespace baize::cli
