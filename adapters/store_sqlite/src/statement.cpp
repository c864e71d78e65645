#include "database.h"

#include <cmath>

namespace baize::store_sqlite {

Statement::Statement(sqlite3* db, const std::string& path, std::string_view sql)
    : db_(db), path_(path) {
  check(sqlite3_prepare_v3(db_, sql.data(), static_cast<int>(sql.size()), SQLITE_PREPARE_PERSISTENT,
                           &statement_, nullptr));
}

void Statement::check(int code) {
  if (code != SQLITE_OK) {
    throw Failure(problem_of(code, path_, sqlite3_errmsg(db_)));
  }
}

bool Statement::next() {
  column_ = 0;
  const int code = sqlite3_step(statement_);
  if (code == SQLITE_ROW) {
    return true;
  }
  const units::Problem problem =
      code == SQLITE_DONE ? units::Problem{} : problem_of(code, path_, sqlite3_errmsg(db_));
  sqlite3_reset(statement_);
  if (code != SQLITE_DONE) {
    throw Failure(problem);
  }
  return false;
}

void Statement::bind(double value) {
  // SQLite would store NaN as NULL, and "not measured" must not come of a mistake.
  if (!std::isfinite(value)) {
    fail("not_a_number", "number", std::to_string(value), "a finite number");
  }
  check(sqlite3_bind_double(statement_, ++bound_, value));
}

void Statement::bind(std::string_view value) {
  check(sqlite3_bind_text64(statement_, ++bound_, value.data() == nullptr ? "" : value.data(),
                            value.size(), SQLITE_STATIC, SQLITE_UTF8));
}

void Statement::bind(Blank value) {
  if (value.text.empty()) {
    bind(std::nullopt);
  } else {
    bind(value.text);
  }
}

void Statement::bind(Bytes value) {
  check(sqlite3_bind_blob64(statement_, ++bound_,
                            value.bytes.data() == nullptr ? "" : value.bytes.data(),
                            value.bytes.size(), SQLITE_STATIC));
}

// Days are written as text, so that anybody can read the file with any SQLite tool.
void Statement::bind(units::Day value) {
  const std::string text = units::iso(value);
  check(sqlite3_bind_text64(statement_, ++bound_, text.data(), text.size(), SQLITE_TRANSIENT,
                            SQLITE_UTF8));
}

void Statement::bind(units::MonthDay value) {
  const std::string text = units::iso(value);
  check(sqlite3_bind_text64(statement_, ++bound_, text.data(), text.size(), SQLITE_TRANSIENT,
                            SQLITE_UTF8));
}

std::string Statement::text() {
  const auto* bytes = static_cast<const char*>(sqlite3_column_blob(statement_, column_));
  const int size = sqlite3_column_bytes(statement_, column_);
  ++column_;
  return bytes == nullptr ? std::string() : std::string(bytes, static_cast<std::size_t>(size));
}

template <class T, class Read> std::optional<T> Statement::maybe(Read read) {
  if (null()) {
    ++column_;
    return std::nullopt;
  }
  return read();
}

std::optional<double> Statement::maybe_real() {
  return maybe<double>([this] { return real(); });
}
std::optional<int> Statement::maybe_whole() {
  return maybe<int>([this] { return whole(); });
}
std::optional<std::string> Statement::maybe_text() {
  return maybe<std::string>([this] { return text(); });
}
std::optional<bool> Statement::maybe_flag() {
  return maybe<bool>([this] { return integer() != 0; });
}
std::optional<units::Length> Statement::maybe_length() {
  return maybe<units::Length>([this] { return units::from_metres(real()); });
}
std::optional<units::Minute> Statement::maybe_minute() {
  return maybe<units::Minute>(
      [this] { return units::Minute{static_cast<std::int16_t>(integer())}; });
}

namespace {
template <class T> T readable(units::Result<T> value, const std::string& path) {
  if (!value) {
    fail("database_damaged", "database", path, "readable: " + units::sentence(value.error()));
  }
  return *value;
}
} // namespace

units::Day Statement::day() {
  return readable(units::parse_iso_day(text()), path_);
}
std::optional<units::Day> Statement::maybe_day() {
  return maybe<units::Day>([this] { return day(); });
}
std::optional<units::MonthDay> Statement::maybe_month_day() {
  return maybe<units::MonthDay>([this] { return readable(units::parse_month_day(text()), path_); });
}

} // namespace baize::store_sqlite
