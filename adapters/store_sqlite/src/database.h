#pragma once

#include "baize/units/day.h"
#include "baize/units/length.h"
#include "baize/units/problem.h"

#include <sqlite3.h>

#include <cstdint>
#include <exception>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>

namespace baize::store_sqlite {

/// A refusal on its way to the library's edge; thrown inside this library only.
class Failure : public std::exception {
 public:
  explicit Failure(units::Problem problem) : problem_(std::move(problem)) {}
  const units::Problem& problem() const { return problem_; }
  const char* what() const noexcept override { return problem_.code.c_str(); }

 private:
  units::Problem problem_;
};

[[noreturn]] void fail(std::string code, std::string field, std::string value, std::string rule,
                       std::string place = {});
/// What SQLite's result code means for the person whose database it is.
units::Problem problem_of(int code, const std::string& path, const std::string& message);

/// Text that is absent when empty.
struct Blank {
  std::string_view text;
};
struct Bytes {
  std::string_view bytes;
};

/// A prepared statement. Values are bound in order, columns are read in order.
class Statement {
 public:
  Statement(sqlite3* db, const std::string& path, std::string_view sql);
  Statement(const Statement&) = delete;
  Statement& operator=(const Statement&) = delete;
  ~Statement() { sqlite3_finalize(statement_); }

  /// Runs a statement that gives no rows. The values need only outlive the call.
  template <class... Values> void run(const Values&... values) {
    start(values...);
    while (next()) {
    }
  }
  /// Begins to read rows; the bound values must live until the last next().
  template <class... Values> void start(const Values&... values) {
    sqlite3_reset(statement_);
    bound_ = 0;
    (bind(values), ...);
  }
  /// True when a row is there; its first column is the next to be read.
  bool next();
  /// Ends the reading early, so that no lock is held.
  void stop() { sqlite3_reset(statement_); }

  std::int64_t integer() { return sqlite3_column_int64(statement_, column_++); }
  int whole() { return static_cast<int>(integer()); }
  double real() { return sqlite3_column_double(statement_, column_++); }
  std::string text(); ///< empty where the column is NULL
  std::optional<double> maybe_real();
  std::optional<int> maybe_whole();
  std::optional<std::string> maybe_text();
  std::optional<bool> maybe_flag();
  units::Day day();
  std::optional<units::Day> maybe_day();
  std::optional<units::Minute> maybe_minute();
  std::optional<units::MonthDay> maybe_month_day();
  std::optional<units::Length> maybe_length();
  sqlite3_stmt* raw() { return statement_; }

 private:
  void bind(int value) { bind(static_cast<std::int64_t>(value)); }
  void bind(std::int64_t value) { check(sqlite3_bind_int64(statement_, ++bound_, value)); }
  void bind(bool value) { bind(static_cast<std::int64_t>(value)); }
  void bind(double value);
  void bind(std::string_view value);
  void bind(const std::string& value) { bind(std::string_view(value)); }
  void bind(const char* value) { bind(std::string_view(value)); }
  void bind(Blank value);
  void bind(Bytes value);
  void bind(std::nullopt_t) { check(sqlite3_bind_null(statement_, ++bound_)); }
  void bind(units::Day value);
  void bind(units::MonthDay value);
  void bind(units::Minute value) { bind(static_cast<std::int64_t>(value.of_day)); }
  void bind(units::Length value) { bind(value.metres); }
  template <class T> void bind(const std::optional<T>& value) {
    if (value) {
      bind(*value);
    } else {
      bind(std::nullopt);
    }
  }
  bool null() { return sqlite3_column_type(statement_, column_) == SQLITE_NULL; }
  template <class T, class Read> std::optional<T> maybe(Read read);
  void check(int code);

  sqlite3* db_;
  const std::string& path_;
  sqlite3_stmt* statement_ = nullptr;
  int bound_ = 0;
  int column_ = 0;
};

/// One connection, with its prepared statements.
class Connection {
 public:
  /// `flags` as sqlite3_open_v2 takes them.
  Connection(std::string path, int flags, int busy_ms);
  Connection(const Connection&) = delete;
  Connection& operator=(const Connection&) = delete;
  ~Connection();

  void execute(const std::string& sql);
  /// The statement of this text, prepared once.
  Statement& use(std::string_view sql);
  std::int64_t number(std::string_view sql);
  std::string word(std::string_view sql);
  std::int64_t last_key() const { return sqlite3_last_insert_rowid(db_); }
  /// Forgets the prepared statements, so that none holds a lock.
  void rest();
  sqlite3* raw() { return db_; }
  const std::string& path() const { return path_; }

 private:
  std::string path_;
  sqlite3* db_ = nullptr;
  struct Hash {
    using is_transparent = void;
    std::size_t operator()(std::string_view text) const {
      return std::hash<std::string_view>()(text);
    }
  };
  std::unordered_map<std::string, std::unique_ptr<Statement>, Hash, std::equal_to<>> statements_;
};

/// Undone at the end of the scope unless committed.
class Transaction {
 public:
  enum class Kind { read, write };
  Transaction(Connection& db, Kind kind);
  Transaction(const Transaction&) = delete;
  Transaction& operator=(const Transaction&) = delete;
  ~Transaction();
  void commit();

 private:
  Connection& db_;
  bool open_ = true;
};

/// Calls f and turns a Failure into the Result's problem.
template <class F> auto guarded(const F& f) -> units::Result<decltype(f())> {
  try {
    return f();
  } catch (const Failure& failure) {
    return tl::unexpected(failure.problem());
  }
}

} // namespace baize::store_sqlite
