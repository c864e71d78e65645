#include "open.h"

#include "schema.h"

#include <fmt/format.h>

#include <filesystem>

namespace baize::store_sqlite {

namespace fs = std::filesystem;

namespace {

void make_folder(const std::string& path) {
  const fs::path folder = fs::path(path).parent_path();
  std::error_code error;
  if (!folder.empty() && !fs::is_directory(folder, error)) {
    fs::create_directories(folder, error);
    if (error) {
      fail("database_unreadable", "database", path,
           "in a folder that can be made (" + error.message() + ")");
    }
  }
}

void check_exists(const std::string& path) {
  std::error_code error;
  if (!fs::exists(path, error)) {
    fail("no_such_database", "database", path, "a database file that exists");
  }
  if (!fs::is_regular_file(path, error)) {
    fail("not_a_baize_database", "database", path, "a database that Baize made");
  }
}

} // namespace

std::unique_ptr<Connection> open_database(const std::string& path, const Options& options) {
  if (options.create && !options.read_only) {
    make_folder(path);
  }
  std::error_code error;
  if (!options.create || options.read_only || fs::exists(path, error)) {
    check_exists(path);
  }
  if (options.read_only) {
    return open_reader(path, options.busy_ms);
  }
  auto db = std::make_unique<Connection>(
      path, SQLITE_OPEN_READWRITE | (options.create ? SQLITE_OPEN_CREATE : 0), options.busy_ms);
  // Nothing may be changed in a file before it is known to be ours: the journal
  // mode is part of the file.
  db->execute("PRAGMA foreign_keys = ON; PRAGMA recursive_triggers = ON; "
              "PRAGMA synchronous = FULL; PRAGMA temp_store = MEMORY; PRAGMA cache_size = -65536");
  if (options.largest_pages > 0) {
    db->execute(fmt::format("PRAGMA max_page_count = {}", options.largest_pages));
  }
  prepare(*db, migrations(), true);
  db->execute("PRAGMA journal_mode = WAL");
  return db;
}

std::unique_ptr<Connection> open_reader(const std::string& path, int busy_ms) {
  auto db = std::make_unique<Connection>(path, SQLITE_OPEN_READONLY, busy_ms);
  db->execute("PRAGMA foreign_keys = ON; PRAGMA cache_size = -16384");
  prepare(*db, migrations(), false);
  return db;
}

} // namespace baize::store_sqlite
