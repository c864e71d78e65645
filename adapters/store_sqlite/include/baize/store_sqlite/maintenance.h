#pragma once

#include "baize/units/day.h"
#include "baize/units/problem.h"

#include <cstdint>
#include <string>
#include <vector>

namespace baize::store_sqlite {

/// What a copy holds, told by its contents and not by its bytes.
struct Copy {
  std::string path;
  std::string check_path; ///< PATH.check: the checksum, as text
  std::string sha256;     ///< of every row of every table, in key order
  std::int64_t rows = 0;
};

/// Copies a database that may be in use (readers and writers go on), and writes
/// the checksum of its contents beside it as PATH.check. The copy appears under
/// its name only when it is whole. Refuses "file_exists", and what opening refuses.
units::Result<Copy> backup(const std::string& database, const std::string& to);

struct Restored {
  Copy copy;
  std::string moved_aside; ///< where the old database is now; empty where there was none
};

/// Puts a copy in the database's place, after its checksum is found right. With
/// `force` an existing database is replaced: it is moved aside (PATH.replaced,
/// PATH.replaced-2 ...) once the new one is ready beside it, and never removed.
/// Refuses "file_exists", "no_such_file", "no_checksum" (PATH.check is missing or
/// cannot be read), "checksum_wrong", and "database_locked" while another
/// program has the database open.
units::Result<Restored> restore(const std::string& from, const std::string& database, bool force);

/// Checks a copy against the checksum beside it.
units::Result<Copy> check_copy(const std::string& path);

/// What the doctor found: sentences, worst first.
struct Findings {
  int version = 0;
  std::int64_t rows = 0;
  std::int64_t clubs = 0;
  std::string sha256;
  std::vector<std::string> wrong;   ///< must be put right
  std::vector<std::string> remarks; ///< worth a look
  bool well() const { return wrong.empty(); }
};

/// Looks through the whole database and changes nothing: SQLite's own integrity
/// and foreign-key checks, version, rows that lead nowhere, photos that are not as
/// they were sent, records that break a rule, and the given copies' checksums. `today` as
/// green::validate asks.
units::Result<Findings> examine(const std::string& database, units::Day today,
                                const std::vector<std::string>& copies = {});

} // namespace baize::store_sqlite
