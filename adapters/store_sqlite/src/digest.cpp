#include "digest.h"

#include "schema.h"
#include "sha256.h"

#include <fmt/format.h>

#include <bit>
#include <iterator>

namespace baize::store_sqlite {

namespace {

std::string key_columns(Connection& db, const std::string& table) {
  Statement rows(
      db.raw(), db.path(),
      fmt::format("SELECT name FROM pragma_table_info('{}') WHERE pk > 0 ORDER BY pk", table));
  std::string columns;
  while (rows.next()) {
    columns += (columns.empty() ? "" : ", ") + rows.text();
  }
  return columns;
}

// Every value is written with its type and, where it can vary, its length, so
// that no two different rows give the same bytes.
void write_value(std::string& to, sqlite3_stmt* row, int column) {
  const auto out = std::back_inserter(to);
  switch (sqlite3_column_type(row, column)) {
  case SQLITE_INTEGER:
    fmt::format_to(out, "i{};", sqlite3_column_int64(row, column));
    break;
  case SQLITE_FLOAT:
    fmt::format_to(out, "r{:016x};",
                   std::bit_cast<std::uint64_t>(sqlite3_column_double(row, column)));
    break;
  case SQLITE_NULL:
    to += "n;";
    break;
  default: {
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(row, column));
    const int size = sqlite3_column_bytes(row, column);
    fmt::format_to(out, "{}{}:", sqlite3_column_type(row, column) == SQLITE_BLOB ? 'b' : 't', size);
    if (size > 0) {
      to.append(bytes, static_cast<std::size_t>(size));
    }
  }
  }
}

} // namespace

Digest digest(Connection& db) {
  Digest result;
  Sha256 sum;
  std::string line;
  std::vector<std::string> tables = raw_tables();
  tables.insert(tables.end(), people_tables().begin(), people_tables().end());
  for (const std::string& table : tables) {
    Statement rows(db.raw(), db.path(),
                   fmt::format("SELECT * FROM {} ORDER BY {}", table, key_columns(db, table)));
    const int columns = sqlite3_column_count(rows.raw());
    line = table + "\n";
    while (rows.next()) {
      for (int i = 0; i < columns; ++i) {
        write_value(line, rows.raw(), i);
      }
      line += '\n';
      ++result.rows;
      if (line.size() > 1 << 16) {
        sum.add(line);
        line.clear();
      }
    }
    sum.add(line);
  }
  result.sha256 = sum.hex();
  return result;
}

} // namespace baize::store_sqlite
