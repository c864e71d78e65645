#include "around.h"

#include "baize/entries_json/entries.h"

#include <algorithm>

namespace baize::store_sqlite {

namespace {

/// The things, the visits they belong or belonged to, and all that belongs to these.
std::set<std::string> family(Connection& db, std::int64_t club,
                             const std::set<std::string>& things) {
  std::set<std::string> visits = things;
  Statement& of = db.use(kOwnersSql);
  for (const std::string& thing : things) {
    of.start(club, thing);
    while (of.next()) {
      visits.insert(of.text());
    }
  }
  std::set<std::string> all = visits;
  Statement& belonging = db.use("SELECT DISTINCT thing FROM entry WHERE club = ? AND visit = ?");
  for (const std::string& visit : visits) {
    belonging.start(club, visit);
    while (belonging.next()) {
      all.insert(belonging.text());
    }
  }
  return all;
}

void add_visits(Connection& db, Beside beside, std::int64_t club, const std::string& value,
                std::vector<green::Visit>& all) {
  const std::string sql = visits_beside_sql(beside);
  Statement& row = db.use(sql);
  row.start(club, value);
  while (row.next()) {
    green::Visit visit = read_revision<green::Visit>(db, row).record;
    const bool there = std::any_of(all.begin(), all.end(),
                                   [&](const green::Visit& other) { return other.id == visit.id; });
    if (!there) {
      all.push_back(std::move(visit));
    }
  }
}

} // namespace

std::string visits_beside_sql(Beside beside) {
  // The plus keeps SQLite from walking through every visit of the club: the few of the
  // day, or that share their rolls, are found first.
  return select_revisions<green::Visit>(
      fmt::format("+i.club = ? AND {} = ? AND r.withdrawn = 0 AND r.revision = (SELECT "
                  "max(revision) FROM visit_revision n WHERE n.record = i.key) ORDER BY i.id",
                  beside == Beside::day ? "r.day" : "r.shared_rolls")
          .c_str());
}

units::Result<journal::Entry> parse_contents(const std::string& contents) {
  return entries_json::parse(contents).and_then(entries_json::read_entry);
}

journal::Entry read_contents(Connection& db, const std::string& contents) {
  auto entry = parse_contents(contents);
  if (!entry) {
    fail("database_damaged", "database", db.path(),
         "whole, and an entry of a phone cannot be read; run the doctor and restore the last good "
         "backup");
  }
  return std::move(*entry);
}

void entries_of(Connection& db, std::int64_t club, const std::string& thing,
                std::vector<journal::Entry>& all) {
  Statement& row =
      db.use("SELECT contents FROM entry WHERE club = ? AND thing = ? ORDER BY arrival");
  row.start(club, thing);
  while (row.next()) {
    all.push_back(read_contents(db, row.text()));
  }
}

EntriesAround::EntriesAround(Connection& db, std::int64_t club, const std::set<std::string>& things)
    : db_(db), club_(club) {
  for (const std::string& thing : family(db, club, things)) {
    entries_of(db, club, thing, entries_);
  }
  ground_.club = load_club(db, club);
  ground_.greens = load_all<green::Green>(db, club);
  ground_.observers = load_all<green::Observer>(db, club);
}

std::vector<green::Visit> EntriesAround::visits_beside(units::Day day,
                                                       const std::string& shared_rolls) const {
  std::vector<green::Visit> all;
  add_visits(db_, Beside::day, club_, units::iso(day), all);
  if (!shared_rolls.empty()) {
    add_visits(db_, Beside::shared_rolls, club_, shared_rolls, all);
  }
  return all;
}

} // namespace baize::store_sqlite
