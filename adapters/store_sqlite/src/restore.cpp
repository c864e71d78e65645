#include "baize/store_sqlite/maintenance.h"
#include "copy.h"
#include "digest.h"
#include "files.h"
#include "open.h"

#include <fmt/format.h>

#include <filesystem>

namespace baize::store_sqlite {

namespace fs = std::filesystem;

namespace {

constexpr int kBusyMs = 2000;

// Leaving the log mode needs the database to ourselves and empties the log into
// the file. A file too damaged for that is moved with its log as it stands.
void close_to_others(const std::string& database) {
  try {
    Connection old(database, SQLITE_OPEN_READWRITE, kBusyMs);
    old.execute("PRAGMA locking_mode = EXCLUSIVE; PRAGMA journal_mode = DELETE; "
                "BEGIN EXCLUSIVE; COMMIT");
  } catch (const Failure& failure) {
    if (failure.problem().code == "database_locked") {
      fail("database_locked", "database", database,
           "closed by every other program before it can be replaced");
    }
  }
}

std::string free_name(const std::string& database) {
  std::string name = database + ".replaced";
  for (int n = 2; fs::exists(name); ++n) {
    name = fmt::format("{}.replaced-{}", database, n);
  }
  return name;
}

std::string move_aside(const std::string& database) {
  close_to_others(database);
  const std::string aside = free_name(database);
  std::error_code error;
  // The log goes first: left alone beside the new file, it would be read into it.
  for (const char* log : {"-wal", "-journal"}) {
    if (fs::exists(database + log, error)) {
      rename_durably(database + log, aside + log);
    }
  }
  fs::remove(database + "-shm", error);
  rename_durably(database, aside);
  return aside;
}

} // namespace

units::Result<Restored> restore(const std::string& from, const std::string& database, bool force) {
  return guarded([&] {
    const Copy good = checked_copy(from);
    std::error_code error;
    const bool there = fs::exists(database, error);
    if (there && !force) {
      fail("file_exists", "database", database,
           "a name that no file has, or replaced with --force");
    }
    const std::string part = database + ".part";
    const Leftover stale(part);
    fs::remove(part, error);
    copy_pages(*open_reader(from, kBusyMs), part);
    if (digest(*open_reader(part, kBusyMs)).sha256 != good.sha256) {
      fail("checksum_wrong", "file", part, "the same as the backup it was copied from");
    }
    Restored done{good, there ? move_aside(database) : std::string()};
    rename_durably(part, database);
    return done;
  });
}

} // namespace baize::store_sqlite
