#pragma once

#include "baize/green/club.h"
#include "baize/services/store_port.h"
#include "database.h"

#include <fmt/format.h>

#include <string>
#include <unordered_map>

namespace baize::store_sqlite {

/// One write: who, when, for which club. The change's own row is made with the
/// first row that needs it, so that a write that adds nothing leaves no trace.
class Writing {
 public:
  Writing(Connection& db, const std::string& club, const services::Author& author);

  Connection& db() { return db_; }
  std::int64_t club() const { return club_; }
  bool new_club() const { return new_club_; }
  std::int64_t change();
  bool changed() const { return change_ != 0; }
  /// The key of a green; refuses one that nothing declares.
  std::int64_t green(const std::string& id, const green::Source& from);
  /// The key of an observer. A club that lists no observers accepts any, so a
  /// name that nothing declares gets a row without contents.
  std::optional<std::int64_t> observer(const std::string& id);
  services::Receipt receipt;
  /// Set while revisions are written that take their record out.
  bool withdrawing = false;

 private:
  using Keys = std::unordered_map<std::string, std::int64_t>;
  std::optional<std::int64_t> find(Keys& keys, std::string_view sql, const std::string& id);

  Connection& db_;
  services::Author author_;
  std::int64_t club_ = 0;
  bool new_club_ = false;
  std::int64_t change_ = 0;
  Keys greens_;
  Keys observers_;
};

/// How one kind of record lies in its tables. `columns` are read in their order
/// after key and id; `joins` finds the ids that keys stand for.
/// `withdrawn` is the column that says so, or 0 where records of a kind stay.
template <class Record> struct Kind;

#define BAIZE_KIND(RECORD)                                                                         \
  template <> struct Kind<RECORD> {                                                                \
    static const char* const table;                                                                \
    static const char* const columns;                                                              \
    static const char* const joins;                                                                \
    static const char* const withdrawn;                                                            \
    static std::string id(const RECORD& record);                                                   \
    static void insert(Writing& to, std::int64_t record, int revision, const RECORD& contents);    \
    static RECORD read(Connection& db, std::int64_t key, std::string id, Statement& row);          \
  }
BAIZE_KIND(green::Green);
BAIZE_KIND(green::Observer);
BAIZE_KIND(green::Visit);
BAIZE_KIND(green::Reading);
BAIZE_KIND(green::Work);
BAIZE_KIND(green::Fixture);
BAIZE_KIND(green::Standard);
#undef BAIZE_KIND

template <class Record> std::string select_revisions(const char* where) {
  using K = Kind<Record>;
  return fmt::format(
      "SELECT r.key, i.id, r.revision, r.change, {4}, {1}, r.file, r.line FROM {0} i "
      "JOIN {0}_revision r ON r.record = i.key {2} WHERE {3}",
      K::table, K::columns, K::joins, where, K::withdrawn);
}

template <class Record> struct Revised {
  Record record;
  int revision = 0;
  std::int64_t change = 0;
  bool withdrawn = false;
};

template <class Record> Revised<Record> read_revision(Connection& db, Statement& row) {
  const std::int64_t key = row.integer();
  std::string id = row.text();
  const int revision = row.whole();
  const std::int64_t change = row.integer();
  const bool withdrawn = row.integer() != 0;
  Revised<Record> read{Kind<Record>::read(db, key, std::move(id), row), revision, change,
                       withdrawn};
  read.record.source.file = row.text();
  read.record.source.line = row.whole();
  return read;
}

/// Every current record of a club, by id.
template <class Record> std::vector<Record> load_all(Connection& db, std::int64_t club) {
  static const std::string sql = select_revisions<Record>(
      fmt::format("i.club = ? AND r.revision = (SELECT max(revision) FROM "
                  "{}_revision n WHERE n.record = i.key) AND {} = 0 ORDER BY i.id",
                  Kind<Record>::table, Kind<Record>::withdrawn)
          .c_str());
  std::vector<Record> all;
  Statement& rows = db.use(sql);
  rows.start(club);
  while (rows.next()) {
    all.push_back(read_revision<Record>(db, rows).record);
  }
  return all;
}

/// Adds a record, or a revision where it differs from the current one.
template <class Record> void keep_one(Writing& to, const Record& record) {
  using K = Kind<Record>;
  static const std::string find =
      fmt::format("SELECT key FROM {} WHERE club = ? AND id = ?", K::table);
  static const std::string add = fmt::format("INSERT INTO {} (club, id) VALUES (?, ?)", K::table);
  static const std::string newest =
      select_revisions<Record>("i.key = ? ORDER BY r.revision DESC LIMIT 1");
  const std::string id = K::id(record);
  std::int64_t key = 0;
  Statement& found = to.db().use(find);
  found.start(to.club(), id);
  if (found.next()) {
    key = found.integer();
  }
  found.stop();
  std::optional<Revised<Record>> current;
  if (key == 0) {
    to.db().use(add).run(to.club(), id);
    key = to.db().last_key();
  } else {
    Statement& row = to.db().use(newest);
    row.start(key);
    if (row.next()) {
      current = read_revision<Record>(to.db(), row);
    }
    row.stop();
  }
  if (!current) {
    ++to.receipt.added;
    K::insert(to, key, 1, record);
    return;
  }
  current->record.source = record.source;
  if (current->record == record && !current->withdrawn) {
    ++to.receipt.unchanged;
    return;
  }
  ++to.receipt.corrected;
  K::insert(to, key, current->revision + 1, record);
}

/// Takes a record out by a revision that says so; nothing where it is not there.
template <class Record> void withdraw_one(Writing& to, const std::string& id) {
  static const std::string newest =
      select_revisions<Record>("i.club = ? AND i.id = ? ORDER BY r.revision DESC LIMIT 1");
  static const std::string key_of =
      fmt::format("SELECT key FROM {} WHERE club = ? AND id = ?", Kind<Record>::table);
  Statement& row = to.db().use(newest);
  row.start(to.club(), id);
  std::optional<Revised<Record>> current;
  if (row.next()) {
    current = read_revision<Record>(to.db(), row);
  }
  row.stop();
  if (!current || current->withdrawn) {
    return;
  }
  Statement& found = to.db().use(key_of);
  found.start(to.club(), id);
  found.next();
  const std::int64_t key = found.integer();
  found.stop();
  ++to.receipt.corrected;
  to.withdrawing = true;
  Kind<Record>::insert(to, key, current->revision + 1, current->record);
  to.withdrawing = false;
}

/// Club and walking order have no table of their own kind.
void keep_club(Writing& to, const green::Club& club);
void keep_walk(Writing& to, const std::vector<green::Green>& greens);
std::optional<std::int64_t> find_club(Connection& db, const std::string& id);
std::int64_t known_club(Connection& db, const std::string& id);
green::Club load_club(Connection& db, std::int64_t club);
/// Ids of the greens in walking order.
std::vector<std::string> load_walk(Connection& db, std::int64_t club);
/// The order that results when some greens are written down in an order of their own.
std::vector<std::string> merged_walk(const std::vector<std::string>& before,
                                     const std::vector<std::string>& written);

} // namespace baize::store_sqlite
