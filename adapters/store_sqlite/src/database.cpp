#include "database.h"

namespace baize::store_sqlite {

void fail(std::string code, std::string field, std::string value, std::string rule,
          std::string place) {
  throw Failure(units::Problem{std::move(code), std::move(field), std::move(value), std::move(rule),
                               std::move(place)});
}

units::Problem problem_of(int code, const std::string& path, const std::string& message) {
  const auto told = [&](const char* name, const std::string& rule) {
    return units::Problem{name, "database", path, rule, {}};
  };
  switch (code & 0xff) {
  case SQLITE_FULL:
    return told("disk_full", "on a disk with room left; nothing was written");
  case SQLITE_READONLY:
    return told("database_read_only", "writable; nothing was written");
  case SQLITE_BUSY:
  case SQLITE_LOCKED:
    return told("database_locked",
                "free to write to, and another program is writing; nothing was written, try again");
  case SQLITE_CORRUPT:
    return told("database_damaged", "whole; run the doctor and restore the last good backup");
  case SQLITE_NOTADB:
    return told("not_a_baize_database", "a database that Baize made");
  case SQLITE_CANTOPEN:
    return told("database_unreadable", "a file that can be opened, in a folder that exists");
  case SQLITE_IOERR:
    return told("database_unreadable",
                "readable and writable on its disk (" + message + "); nothing was written");
  case SQLITE_CONSTRAINT:
    return told("database_rule",
                "given rows that keep its rules (" + message + "); nothing was written");
  default:
    return told("database_trouble", "usable (" + message + "); nothing was written");
  }
}

Connection::Connection(std::string path, int flags, int busy_ms) : path_(std::move(path)) {
  const int code = sqlite3_open_v2(path_.c_str(), &db_, flags | SQLITE_OPEN_NOMUTEX, nullptr);
  if (code != SQLITE_OK) {
    const std::string message = db_ == nullptr ? "no memory" : sqlite3_errmsg(db_);
    sqlite3_close(db_);
    throw Failure(problem_of(code, path_, message));
  }
  sqlite3_busy_timeout(db_, busy_ms);
}

Connection::~Connection() {
  statements_.clear();
  sqlite3_close(db_);
}

void Connection::execute(const std::string& sql) {
  const int code = sqlite3_exec(db_, sql.c_str(), nullptr, nullptr, nullptr);
  if (code != SQLITE_OK) {
    throw Failure(problem_of(code, path_, sqlite3_errmsg(db_)));
  }
}

Statement& Connection::use(std::string_view sql) {
  auto found = statements_.find(sql);
  if (found == statements_.end()) {
    found = statements_.emplace(sql, std::make_unique<Statement>(db_, path_, sql)).first;
  }
  return *found->second;
}

std::int64_t Connection::number(std::string_view sql) {
  Statement statement(db_, path_, sql);
  return statement.next() ? statement.integer() : 0;
}

std::string Connection::word(std::string_view sql) {
  Statement statement(db_, path_, sql);
  return statement.next() ? statement.text() : std::string();
}

void Connection::rest() {
  for (auto& [sql, statement] : statements_) {
    statement->stop();
  }
}

Transaction::Transaction(Connection& db, Kind kind) : db_(db) {
  db_.execute(kind == Kind::write ? "BEGIN IMMEDIATE" : "BEGIN");
}

Transaction::~Transaction() {
  if (open_) {
    db_.rest();
    // SQLite has undone it by itself after a full disk; asking again is harmless.
    sqlite3_exec(db_.raw(), "ROLLBACK", nullptr, nullptr, nullptr);
  }
}

void Transaction::commit() {
  db_.rest();
  db_.execute("COMMIT");
  open_ = false;
}

} // namespace baize::store_sqlite
