#pragma once

#include "baize/store_sqlite/maintenance.h"
#include "database.h"

namespace baize::store_sqlite {

/// All pages of one state of `from`, into a new single file.
void copy_pages(Connection& from, const std::string& to);
/// As check_copy, but throws.
Copy checked_copy(const std::string& path);

} // namespace baize::store_sqlite
