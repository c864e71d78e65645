#include "kind.h"

namespace baize::store_sqlite {

std::optional<std::int64_t> find_club(Connection& db, const std::string& id) {
  Statement& row = db.use("SELECT key FROM club WHERE id = ?");
  row.start(id);
  std::optional<std::int64_t> key;
  if (row.next()) {
    key = row.integer();
  }
  row.stop();
  return key;
}

std::int64_t known_club(Connection& db, const std::string& id) {
  const auto key = find_club(db, id);
  if (!key) {
    fail("no_such_club", "club", id, "a club that is in the database");
  }
  return *key;
}

Writing::Writing(Connection& db, const std::string& club, const services::Author& author)
    : db_(db), author_(author) {
  if (club.empty()) {
    fail("no_such_club", "club", club, "the club that the records belong to");
  }
  if (const auto known = find_club(db, club)) {
    club_ = *known;
    return;
  }
  new_club_ = true;
  db_.use("INSERT INTO club (id) VALUES (?)").run(club);
  club_ = db_.last_key();
}

std::int64_t Writing::change() {
  if (change_ == 0) {
    db_.use("INSERT INTO change (club, author, recorded_at) VALUES (?, ?, ?)")
        .run(club_, author_.name, author_.at);
    change_ = db_.last_key();
  }
  return change_;
}

std::optional<std::int64_t> Writing::find(Keys& keys, std::string_view sql, const std::string& id) {
  if (const auto known = keys.find(id); known != keys.end()) {
    return known->second;
  }
  Statement& row = db_.use(sql);
  row.start(club_, id);
  std::optional<std::int64_t> key;
  if (row.next()) {
    key = row.integer();
    keys.emplace(id, *key);
  }
  row.stop();
  return key;
}

namespace {
std::string place(const green::Source& from) {
  return from.file.empty() ? std::string() : fmt::format("{} line {}", from.file, from.line);
}
} // namespace

std::int64_t Writing::green(const std::string& id, const green::Source& from) {
  const auto key = find(greens_, "SELECT key FROM green WHERE club = ? AND id = ?", id);
  if (!key) {
    fail("unknown_green", "green", id, "a green of the club", place(from));
  }
  return *key;
}

std::optional<std::int64_t> Writing::observer(const std::string& id) {
  if (id.empty()) {
    return std::nullopt;
  }
  if (const auto key = find(observers_, "SELECT key FROM observer WHERE club = ? AND id = ?", id)) {
    return key;
  }
  db_.use("INSERT INTO observer (club, id) VALUES (?, ?)").run(club_, id);
  return observers_.emplace(id, db_.last_key()).first->second;
}

} // namespace baize::store_sqlite
