#include "baize/store_sqlite/maintenance.h"
#include "copy.h"
#include "digest.h"
#include "files.h"
#include "open.h"

#include <fmt/format.h>

#include <filesystem>
#include <sstream>

namespace baize::store_sqlite {

namespace fs = std::filesystem;

namespace {
constexpr int kBusyMs = 5000;

std::string check_text(const Digest& sum) {
  return fmt::format("Baize database, contents\nsha256 {}\nrows {}\n", sum.sha256, sum.rows);
}

Digest parse_check(const std::string& path) {
  std::istringstream in(read_text(path, "no_checksum"));
  std::string title;
  std::string sum_word;
  std::string rows_word;
  Digest sum;
  std::getline(in, title);
  in >> sum_word >> sum.sha256 >> rows_word >> sum.rows;
  if (!in || sum_word != "sha256" || rows_word != "rows" || sum.sha256.size() != 64) {
    fail("no_checksum", "file", path, "a checksum that the backup command wrote");
  }
  return sum;
}
} // namespace

void copy_pages(Connection& from, const std::string& to) {
  Connection copy(to, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, kBusyMs);
  sqlite3_backup* work = sqlite3_backup_init(copy.raw(), "main", from.raw(), "main");
  if (work == nullptr) {
    throw Failure(problem_of(sqlite3_errcode(copy.raw()), to, sqlite3_errmsg(copy.raw())));
  }
  const int stepped = sqlite3_backup_step(work, -1);
  const int finished = sqlite3_backup_finish(work);
  if (stepped != SQLITE_DONE || finished != SQLITE_OK) {
    const int code = finished != SQLITE_OK ? finished : stepped;
    throw Failure(problem_of(code, to, sqlite3_errstr(code)));
  }
  // One file without a log beside it: it can be carried and opened read-only.
  copy.execute("PRAGMA journal_mode = DELETE");
}

Copy checked_copy(const std::string& path) {
  std::error_code error;
  if (!fs::is_regular_file(path, error)) {
    fail("no_such_file", "file", path, "a backup that exists");
  }
  const Digest expected = parse_check(path + ".check");
  const auto db = open_reader(path, kBusyMs);
  const Digest found = digest(*db);
  if (found.sha256 != expected.sha256) {
    fail("checksum_wrong", "file", path,
         fmt::format("the backup that its checksum was written for: {} rows with sha256 {}, and "
                     "it holds {} rows with sha256 {}",
                     expected.rows, expected.sha256, found.rows, found.sha256));
  }
  return {path, path + ".check", found.sha256, found.rows};
}

units::Result<Copy> check_copy(const std::string& path) {
  return guarded([&] { return checked_copy(path); });
}

units::Result<Copy> backup(const std::string& database, const std::string& to) {
  return guarded([&] {
    std::error_code error;
    if (!fs::is_regular_file(database, error)) {
      fail("no_such_database", "database", database, "a database file that exists");
    }
    for (const std::string& taken : {to, to + ".check"}) {
      if (fs::exists(taken, error)) {
        fail("file_exists", "file", taken, "a new name: a backup never replaces a file");
      }
    }
    const std::string part = to + ".part";
    const Leftover stale(part);
    fs::remove(part, error);
    copy_pages(*open_reader(database, kBusyMs), part);
    const Digest sum = digest(*open_reader(part, kBusyMs));
    write_durably(to + ".check", check_text(sum));
    try {
      rename_durably(part, to);
    } catch (const Failure&) {
      fs::remove(to + ".check", error);
      throw;
    }
    return Copy{to, to + ".check", sum.sha256, sum.rows};
  });
}

} // namespace baize::store_sqlite
