#pragma once

#include "session.h"

#include <string>
#include <vector>

namespace baize::cli {

/// One path that ends in .json.
bool is_entries_file(const std::vector<std::string>& paths);
/// Hands in the entries of a file that a phone saved, or with `dry_run` says
/// what of it can be read.
void import_entries(Session& session, const std::string& path, const std::string& club,
                    bool dry_run);

} // namespace baize::cli
