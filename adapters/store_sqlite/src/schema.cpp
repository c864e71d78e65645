#include "schema.h"

#include "tables.h"

#include <fmt/format.h>

namespace baize::store_sqlite {

namespace {

/// The tables of version 1, whose step is never edited.
const std::vector<std::string>& first_tables() {
  static const std::vector<std::string> names{"club",
                                              "change",
                                              "club_revision",
                                              "green",
                                              "green_revision",
                                              "green_half",
                                              "spot",
                                              "walk",
                                              "walk_green",
                                              "observer",
                                              "observer_revision",
                                              "visit",
                                              "visit_revision",
                                              "run",
                                              "roll",
                                              "mark",
                                              "reading",
                                              "reading_revision",
                                              "work",
                                              "work_revision",
                                              "work_green",
                                              "work_parameter",
                                              "fixture",
                                              "fixture_revision",
                                              "standard",
                                              "standard_revision",
                                              "weather_day",
                                              "received_content",
                                              "received_file"};
  return names;
}

std::string guards(const std::vector<std::string>& tables) {
  std::string sql;
  for (const std::string& table : tables) {
    for (const char* verb : {"UPDATE", "DELETE"}) {
      sql +=
          fmt::format("CREATE TRIGGER {0}_refuses_{1} BEFORE {1} ON {0} BEGIN SELECT RAISE(ABORT, "
                      "'raw records are never changed or removed: write a new revision'); END;\n",
                      table, verb);
    }
  }
  return sql;
}

constexpr const char* kCurrentRoll = R"sql(
CREATE VIEW current_roll AS SELECT v.club_id, v.visit_id, g.id AS green_id, v.half,
  o.id AS observer_id, v.day, u.spot, u.direction, r.roll_order, r.distance_m, r.marks, r.score
  FROM current_visit v JOIN green g ON g.key = v.green LEFT JOIN observer o ON o.key = v.observer
  JOIN run u ON u.visit = v.key JOIN roll r ON r.visit = u.visit AND r.run = u.place;
)sql";

// current_visit and its like: the newest revision of each record with its id.
std::string views() {
  std::string sql = R"sql(
CREATE VIEW current_club AS SELECT i.id AS club_id, r.* FROM club i
  JOIN club_revision r ON r.record = i.key
  WHERE r.revision = (SELECT max(revision) FROM club_revision n WHERE n.record = i.key);
CREATE VIEW current_weather_day AS SELECT c.id AS club_id, w.* FROM weather_day w
  JOIN club c ON c.key = w.club WHERE w.revision =
  (SELECT max(revision) FROM weather_day n WHERE n.club = w.club AND n.day = w.day);
)sql";
  for (const char* kind :
       {"green", "observer", "visit", "reading", "work", "fixture", "standard"}) {
    sql += fmt::format(
        "CREATE VIEW current_{0} AS SELECT c.id AS club_id, i.id AS {0}_id, r.* FROM {0} i "
        "JOIN club c ON c.key = i.club JOIN {0}_revision r ON r.record = i.key WHERE r.revision = "
        "(SELECT max(revision) FROM {0}_revision n WHERE n.record = i.key);\n",
        kind);
  }
  return sql + kCurrentRoll;
}

// From version 3 on a record may be withdrawn.
std::string views_without_withdrawn() {
  std::string sql = "DROP VIEW current_roll;\n";
  for (const char* kind : {"visit", "reading", "work"}) {
    sql += fmt::format(
        "DROP VIEW current_{0};\n"
        "CREATE VIEW current_{0} AS SELECT c.id AS club_id, i.id AS {0}_id, r.* FROM {0} i "
        "JOIN club c ON c.key = i.club JOIN {0}_revision r ON r.record = i.key WHERE r.revision = "
        "(SELECT max(revision) FROM {0}_revision n WHERE n.record = i.key) AND r.withdrawn = 0;\n",
        kind);
  }
  return sql + kCurrentRoll;
}

void begin_database(Connection& db) {
  if (db.number("SELECT count(*) FROM sqlite_schema") != 0) {
    fail("not_a_baize_database", "database", db.path(), "a database that Baize made");
  }
  db.execute(fmt::format("PRAGMA application_id = {}", kApplicationId));
}

} // namespace

const std::vector<std::string>& raw_tables() {
  static const std::vector<std::string> names = [] {
    std::vector<std::string> all = first_tables();
    all.emplace_back("entry");
    all.emplace_back("photo");
    return all;
  }();
  return names;
}

const std::vector<std::string>& people_tables() {
  static const std::vector<std::string> names{"person", "person_role", "invitation", "reading_link",
                                              "session"};
  return names;
}

std::vector<std::string> migrations() {
  return {std::string(kTablesOfRecords) + kTablesOfVisits + kTablesOfWorks +
              guards(first_tables()) + views(),
          kSharedRolls,
          std::string(kEntries) + guards({"entry"}) + views_without_withdrawn(),
          kPeople,
          std::string(kPhotos) + guards({"entry", "photo"}),
          kSharedRollsFound};
}

void prepare(Connection& db, const std::vector<std::string>& steps, bool change) {
  const auto newest = static_cast<std::int64_t>(steps.size());
  const auto look = [&] {
    const std::int64_t version = db.number("PRAGMA user_version");
    const bool ours = db.number("PRAGMA application_id") == kApplicationId;
    if (ours && version > newest) {
      fail("database_too_new", "database", db.path(),
           fmt::format("of version {} or older, and it is of version {}: a newer Baize made it, "
                       "use that one",
                       newest, version));
    }
    if (!ours && !change) {
      fail("not_a_baize_database", "database", db.path(), "a database that Baize made");
    }
    if (version < newest && !change) {
      fail("database_too_old", "database", db.path(),
           fmt::format("of version {}, and it is of version {}: open it once for writing, which "
                       "brings it up to date",
                       newest, version));
    }
    return ours ? version : -1;
  };
  if (look() == newest || !change) {
    return;
  }
  // Another program may be doing the same: what was seen is looked at again
  // under the lock.
  Transaction transaction(db, Transaction::Kind::write);
  std::int64_t version = look();
  if (version < 0) {
    begin_database(db);
    version = 0;
  }
  for (; version < newest; ++version) {
    db.execute(steps[static_cast<std::size_t>(version)]);
    db.execute(fmt::format("PRAGMA user_version = {}", version + 1));
  }
  transaction.commit();
}

} // namespace baize::store_sqlite
