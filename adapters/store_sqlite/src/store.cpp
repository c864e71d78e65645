#include "baize/store_sqlite/store.h"

#include "entry_rows.h"
#include "group.h"
#include "load.h"
#include "open.h"
#include "people_store.h"
#include "photo_store.h"
#include "weather_rows.h"

#include <atomic>
#include <type_traits>

namespace baize::store_sqlite {

class SqliteStore::Inside {
 public:
  Inside(const std::string& path, const Options& options)
      : path_(path), options_(options), writer_(open_database(path, options)) {}

  /// One write: all of what f does, or nothing of it. With `shares` it may stand
  /// in one transaction with others that wait beside it.
  template <class F> auto write(const F& f, bool shares = false) {
    using Told = std::invoke_result_t<F, Connection&, bool&>;
    return guarded([&] {
      std::optional<Told> told;
      Write one{[&](Connection& db, bool& changed) { told = f(db, changed); }, shares};
      queue_.pass(one, [&](const std::vector<Write*>& group) {
        commits_ += write_group(*writer_, group);
        writes_ += static_cast<std::int64_t>(group.size());
      });
      if (one.error) {
        std::rethrow_exception(one.error);
      }
      return std::move(*told);
    });
  }

  WriteFigures figures() const {
    return {static_cast<std::int64_t>(queue_.waiting()), writes_, commits_};
  }

  /// One reading of one state of the database.
  template <class F> auto read(const F& f) {
    return guarded([&] {
      std::unique_ptr<Connection> db = lend();
      auto result = [&] {
        const Transaction transaction(*db, Transaction::Kind::read);
        return f(*db);
      }();
      const std::lock_guard lock(mutex_);
      idle_.push_back(std::move(db));
      return result;
    });
  }

 private:
  // A reader's connection is given back only when all went well.
  std::unique_ptr<Connection> lend() {
    {
      const std::lock_guard lock(mutex_);
      if (!idle_.empty()) {
        auto db = std::move(idle_.back());
        idle_.pop_back();
        return db;
      }
    }
    return open_reader(path_, options_.busy_ms);
  }

  std::string path_;
  Options options_;
  Queue queue_;
  std::unique_ptr<Connection> writer_;
  std::atomic<std::int64_t> writes_ = 0;
  std::atomic<std::int64_t> commits_ = 0;
  std::mutex mutex_;
  std::vector<std::unique_ptr<Connection>> idle_;
};

units::Result<std::unique_ptr<SqliteStore>> SqliteStore::open(const std::string& path,
                                                              const Options& options) {
  return guarded([&] {
    return std::unique_ptr<SqliteStore>(new SqliteStore(std::make_unique<Inside>(path, options)));
  });
}

SqliteStore::SqliteStore(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {
  const InTransaction write = [this](const auto& work) {
    return inside_->write([&](Connection& db, bool& changed) {
      work(db);
      changed = true;
      return 0;
    });
  };
  const InTransaction read = [this](const auto& work) {
    return inside_->read([&](Connection& db) {
      work(db);
      return 0;
    });
  };
  people_ = make_people_store(write, read);
  photos_ = make_photo_store(write, read);
}
SqliteStore::~SqliteStore() = default;

WriteFigures SqliteStore::figures() const {
  return inside_->figures();
}

units::Result<std::vector<services::ClubName>> SqliteStore::clubs() {
  return inside_->read([](Connection& db) {
    std::vector<services::ClubName> all;
    Statement& row = db.use("SELECT club_id, name FROM current_club ORDER BY club_id");
    row.start();
    while (row.next()) {
      services::ClubName club;
      club.id = row.text();
      club.name = row.text();
      all.push_back(std::move(club));
    }
    return all;
  });
}

units::Result<green::Records> SqliteStore::load(const std::string& club) {
  return inside_->read([&](Connection& db) { return load_records(db, known_club(db, club)); });
}

units::Result<climate::Weather> SqliteStore::weather(const std::string& club) {
  return inside_->read([&](Connection& db) { return load_weather(db, known_club(db, club)); });
}

units::Result<services::Receipt>
SqliteStore::keep(const green::Records& records, const services::Author& author,
                  const std::vector<services::ReceivedFile>& files) {
  return inside_->write([&](Connection& db, bool& changed) {
    Writing to(db, records.club.id, author);
    keep_records(to, records);
    keep_received(to, files);
    changed = to.changed();
    return to.receipt;
  });
}

units::Result<services::Receipt> SqliteStore::keep_weather(const std::string& club,
                                                           const climate::Weather& weather,
                                                           const services::Author& author) {
  return inside_->write([&](Connection& db, bool& changed) {
    known_club(db, club);
    Writing to(db, club, author);
    keep_weather_days(to, weather);
    changed = to.changed();
    return to.receipt;
  });
}

units::Result<std::vector<services::ReceivedFile>> SqliteStore::received(const std::string& club) {
  return inside_->read([&](Connection& db) { return load_received(db, known_club(db, club)); });
}

units::Result<std::vector<services::Revision>>
SqliteStore::history(const std::string& club, const std::string& kind, const std::string& id) {
  return inside_->read(
      [&](Connection& db) { return load_history(db, known_club(db, club), kind, id); });
}

units::Result<std::int64_t> SqliteStore::change_number() {
  return inside_->read(
      [](Connection& db) { return db.number("SELECT coalesce(max(key), 0) FROM change"); });
}

units::Result<services::KeptEntries>
SqliteStore::keep_entries(const std::string& club, const std::vector<journal::Entry>& entries,
                          const services::Author& author, const services::Decide& decide) {
  const auto work = [&](Connection& db, bool& changed) {
    known_club(db, club);
    Writing to(db, club, author);
    services::KeptEntries kept = store_sqlite::keep_entries(to, entries, decide);
    changed = to.changed();
    return kept;
  };
  return inside_->write(work, true);
}

units::Result<services::EntriesPage> SqliteStore::entries_since(const std::string& club,
                                                                std::int64_t since, int limit) {
  return inside_->read([&](Connection& db) {
    return store_sqlite::entries_since(db, known_club(db, club), since, limit);
  });
}

units::Result<std::vector<journal::Entry>> SqliteStore::branched(const std::string& club) {
  return inside_->read(
      [&](Connection& db) { return store_sqlite::branched(db, known_club(db, club)); });
}

} // namespace baize::store_sqlite
