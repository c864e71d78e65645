#include "group.h"

namespace baize::store_sqlite {

namespace {

/// Does its work and keeps its error; true when there is something to commit.
bool worked(Connection& db, Write& one) {
  bool changed = false;
  one.error = nullptr;
  try {
    one.work(db, changed);
  } catch (...) {
    one.error = std::current_exception();
    return false;
  }
  return changed;
}

/// After a full disk and the like SQLite ends the whole transaction by itself.
bool still_open(Connection& db) {
  return sqlite3_get_autocommit(db.raw()) == 0;
}

int write_alone(Connection& db, Write& one) {
  try {
    Transaction transaction(db, Transaction::Kind::write);
    if (worked(db, one)) {
      transaction.commit();
      return 1;
    }
  } catch (...) {
    one.error = std::current_exception();
  }
  return 0;
}

/// One write of several; true when it changed something that stays.
bool write_step(Connection& db, Write& one) {
  db.execute("SAVEPOINT one");
  const bool changed = worked(db, one);
  db.rest();
  if (still_open(db)) {
    db.execute(changed ? "RELEASE one" : "ROLLBACK TO one; RELEASE one");
  }
  return changed;
}

/// The commits made; absent: all was taken back.
std::optional<int> write_together(Connection& db, Transaction& transaction,
                                  const std::vector<Write*>& group) {
  try {
    bool changed = false;
    for (Write* one : group) {
      changed = write_step(db, *one) || changed;
      if (!still_open(db)) {
        return std::nullopt;
      }
    }
    if (changed) {
      transaction.commit();
    }
    return changed ? 1 : 0;
  } catch (const Failure&) {
    return std::nullopt;
  }
}

} // namespace

int write_group(Connection& db, const std::vector<Write*>& group) noexcept {
  if (group.size() > 1) {
    std::optional<Transaction> transaction;
    try {
      transaction.emplace(db, Transaction::Kind::write);
    } catch (...) { // another program holds the database: waiting again for each helps nobody
      for (Write* one : group) {
        one->error = std::current_exception();
      }
      return 0;
    }
    if (const auto commits = write_together(db, *transaction, group)) {
      return *commits;
    }
  }
  int commits = 0;
  for (Write* one : group) {
    commits += write_alone(db, *one);
  }
  return commits;
}

} // namespace baize::store_sqlite
