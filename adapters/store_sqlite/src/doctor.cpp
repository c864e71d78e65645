#include "baize/green/validate.h"
#include "baize/store_sqlite/maintenance.h"
#include "copy.h"
#include "digest.h"
#include "entry_rows.h"
#include "load.h"
#include "open.h"
#include "people_rows.h"
#include "photo_rows.h"
#include "schema.h"
#include "sha256.h"

#include <fmt/format.h>

#include <map>

namespace baize::store_sqlite {

namespace {

constexpr int kBusyMs = 5000;
constexpr std::size_t kMostSentences = 50;

/// Runs one check; a check that the damage itself stops is a finding too.
template <class F> void attempt(Findings& findings, const F& check) {
  try {
    check();
  } catch (const Failure& failure) {
    findings.wrong.push_back(units::sentence(failure.problem()));
  }
}

void check_pages(Connection& db, Findings& findings) {
  Statement rows(db.raw(), db.path(), "PRAGMA integrity_check(50)");
  while (rows.next()) {
    const std::string line = rows.text();
    if (line != "ok") {
      findings.wrong.push_back("The file is damaged: " + line + ".");
    }
  }
}

void check_keys(Connection& db, Findings& findings) {
  std::map<std::pair<std::string, std::string>, int> lost;
  Statement rows(db.raw(), db.path(), "PRAGMA foreign_key_check");
  while (rows.next()) {
    const std::string table = rows.text();
    rows.maybe_whole(); // the row's number, which tables keyed otherwise do not have
    ++lost[{table, rows.text()}];
  }
  for (const auto& [tables, count] : lost) {
    findings.wrong.push_back(fmt::format("{} rows of the table {} lead to rows of {} that are not "
                                         "there.",
                                         count, tables.first, tables.second));
  }
}

void check_revisions(Connection& db, Findings& findings) {
  for (const std::string kind :
       {"club", "green", "observer", "visit", "reading", "work", "fixture", "standard"}) {
    // An observer that nothing declares is a name only.
    const std::int64_t empty =
        kind == "observer"
            ? 0
            : db.number(fmt::format(
                  "SELECT count(*) FROM {0} WHERE key NOT IN (SELECT record FROM {0}_revision)",
                  kind));
    if (empty > 0) {
      findings.wrong.push_back(
          fmt::format("{} records of the kind {} have no contents.", empty, kind));
    }
    const std::int64_t gaps =
        db.number(fmt::format("SELECT count(*) FROM (SELECT 1 FROM {}_revision GROUP BY record "
                              "HAVING max(revision) <> count(*))",
                              kind));
    if (gaps > 0) {
      findings.wrong.push_back(fmt::format(
          "{} records of the kind {} have lost a revision: their numbers have gaps.", gaps, kind));
    }
  }
  const std::int64_t marks = db.number(
      "SELECT count(*) FROM roll r WHERE coalesce(r.marks, 0) <> (SELECT count(*) FROM mark m "
      "WHERE m.visit = r.visit AND m.run = r.run AND m.roll = r.place)");
  if (marks > 0) {
    findings.wrong.push_back(
        fmt::format("{} rolls do not have as many marks as were noted.", marks));
  }
}

void check_guards(Connection& db, Findings& findings) {
  const auto guards = db.number("SELECT count(*) FROM sqlite_schema WHERE type = 'trigger' AND "
                                "(name LIKE '%_refuses_UPDATE' OR name LIKE '%_refuses_DELETE')");
  if (guards < static_cast<std::int64_t>(2 * raw_tables().size())) {
    findings.wrong.push_back("Guards that keep raw records from being changed are missing: "
                             "somebody has removed them.");
  }
}

void check_received(Connection& db, Findings& findings) {
  Statement rows(db.raw(), db.path(), "SELECT sha256, content FROM received_content");
  int wrong = 0;
  while (rows.next()) {
    const std::string sum = rows.text();
    wrong += sha256(rows.text()) == sum ? 0 : 1;
  }
  if (wrong > 0) {
    findings.wrong.push_back(fmt::format(
        "{} received files are not as they were received: their checksum is wrong.", wrong));
  }
}

/// Entries say what they said: what can no longer be read, or stands under
/// another id, was altered from outside.
void check_entries(Connection& db, Findings& findings) {
  const std::int64_t wrong = unreadable_entries(db);
  if (wrong > 0) {
    findings.wrong.push_back(
        fmt::format("{} entries of phones are not as they were handed in.", wrong));
  }
}

/// A picture is what its phone sent, to the byte.
void check_photos(Connection& db, Findings& findings) {
  const std::int64_t wrong = unsound_photos(db);
  if (wrong > 0) {
    findings.wrong.push_back(
        fmt::format("{} photos are not as they were sent: their checksum is wrong.", wrong));
  }
}

void check_people(Connection& db, Findings& findings) {
  const std::int64_t wrong = unsound_people(db);
  if (wrong > 0) {
    findings.wrong.push_back(fmt::format(
        "{} accounts or sessions were altered from outside: nobody can use them.", wrong));
  }
  const std::int64_t headless =
      db.number("SELECT count(DISTINCT club) FROM person_role WHERE club NOT IN "
                "(SELECT club FROM person_role WHERE role = 'head_greenkeeper')");
  if (headless > 0) {
    findings.remarks.push_back(fmt::format(
        "{} clubs have people and no head greenkeeper among them: nobody there can invite.",
        headless));
  }
}

/// Sentences about one club, no more than can be read.
class Told {
 public:
  using Say = std::string (*)(const units::Problem&);
  Told(std::vector<std::string>& to, std::string club, Say say)
      : to_(to), club_(std::move(club)), say_(say) {}
  void add(const std::vector<units::Problem>& problems) {
    for (const units::Problem& problem : problems) {
      if (++count_ <= kMostSentences) {
        to_.push_back("Club " + club_ + ": " + say_(problem));
      }
    }
  }
  void close() {
    if (count_ > kMostSentences) {
      to_.push_back(
          fmt::format("Club {}: and {} more like these.", club_, count_ - kMostSentences));
    }
  }

 private:
  std::vector<std::string>& to_;
  std::string club_;
  Say say_;
  std::size_t count_ = 0;
};

void check_records(Connection& db, units::Day today, Findings& findings) {
  std::vector<std::int64_t> clubs;
  Statement rows(db.raw(), db.path(), "SELECT key FROM club ORDER BY id");
  while (rows.next()) {
    clubs.push_back(rows.integer());
  }
  findings.clubs = static_cast<std::int64_t>(clubs.size());
  for (const std::int64_t club : clubs) {
    const green::Records records = load_records(db, club);
    Told wrong(findings.wrong, records.club.id, units::sentence);
    wrong.add(green::validate(records, today));
    wrong.close();
    Told remarks(findings.remarks, records.club.id, units::remark_sentence);
    for (const green::Visit& visit : records.visits) {
      remarks.add(green::remarks(visit));
    }
    remarks.close();
  }
}

} // namespace

units::Result<Findings> examine(const std::string& database, units::Day today,
                                const std::vector<std::string>& copies) {
  return guarded([&] {
    Options look;
    look.read_only = true;
    look.busy_ms = kBusyMs;
    const auto db = open_database(database, look);
    Findings findings;
    findings.version = static_cast<int>(db->number("PRAGMA user_version"));
    attempt(findings, [&] { check_pages(*db, findings); });
    attempt(findings, [&] { check_keys(*db, findings); });
    attempt(findings, [&] { check_revisions(*db, findings); });
    attempt(findings, [&] { check_guards(*db, findings); });
    attempt(findings, [&] { check_received(*db, findings); });
    attempt(findings, [&] { check_entries(*db, findings); });
    attempt(findings, [&] { check_photos(*db, findings); });
    attempt(findings, [&] { check_people(*db, findings); });
    attempt(findings, [&] { check_records(*db, today, findings); });
    attempt(findings, [&] {
      const Digest sum = digest(*db);
      findings.sha256 = sum.sha256;
      findings.rows = sum.rows;
    });
    for (const std::string& copy : copies) {
      attempt(findings, [&] { checked_copy(copy); });
    }
    return findings;
  });
}

} // namespace baize::store_sqlite
