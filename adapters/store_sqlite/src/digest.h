#pragma once

#include "database.h"

#include <string>

namespace baize::store_sqlite {

struct Digest {
  std::string sha256;
  std::int64_t rows = 0;
};

/// SHA-256 of every row of every table in key order. It tells contents, not
/// pages: a copy, a vacuumed file and the original have the same.
Digest digest(Connection& db);

} // namespace baize::store_sqlite
