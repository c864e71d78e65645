#pragma once

#include "baize/store_sqlite/store.h"
#include "database.h"

namespace baize::store_sqlite {

/// The writer's connection: a Baize database of the newest version.
std::unique_ptr<Connection> open_database(const std::string& path, const Options& options);
/// A connection that can only read.
std::unique_ptr<Connection> open_reader(const std::string& path, int busy_ms);

} // namespace baize::store_sqlite
