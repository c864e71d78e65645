// Entries of phones, as they arrived.
#include "entry_rows.h"

#include "around.h"
#include "baize/entries_json/entries.h"
#include "load.h"

namespace baize::store_sqlite {

namespace {

std::string contents_of(const journal::Entry& entry) {
  return entries_json::text(entries_json::to_json(entry));
}

/// The contents kept under the id; absent: there are none.
std::optional<std::string> kept_under(Connection& db, std::int64_t club, const std::string& id) {
  Statement& row = db.use("SELECT contents FROM entry WHERE club = ? AND id = ?");
  row.start(club, id);
  std::optional<std::string> contents;
  if (row.next()) {
    contents = row.text();
  }
  row.stop();
  return contents;
}

bool is_full(Connection& db, std::int64_t club, const std::string& thing) {
  Statement& row = db.use("SELECT count(*) FROM entry WHERE club = ? AND thing = ?");
  row.start(club, thing);
  const bool full = row.next() && row.whole() >= services::kMostOfThing;
  row.stop();
  return full;
}

std::optional<std::string> named(const journal::Entry& entry, const char* field) {
  const journal::Value* said = journal::find(entry.set, field);
  return said != nullptr && said->text() != nullptr ? std::optional(*said->text()) : std::nullopt;
}

/// What a roll, a total or a photo says it belongs to: a visit, or a photo's work.
std::optional<std::string> owner_of(const journal::Entry& entry) {
  const bool photo = entry.kind == journal::Kind::photo;
  if (entry.kind == journal::Kind::roll || entry.kind == journal::Kind::total || photo) {
    const auto visit = named(entry, "visit");
    return visit || !photo ? visit : named(entry, "work");
  }
  return std::nullopt;
}

std::optional<std::string> over_one(const journal::Entry& entry) {
  if (entry.over.size() > 1) {
    return std::nullopt;
  }
  return entry.over.empty() ? std::string() : entry.over.front();
}

void add(Writing& to, const journal::Entry& entry, const std::string& contents) {
  to.db()
      .use("INSERT INTO entry (club, id, change, kind, thing, visit, over_one, contents) "
           "VALUES (?, ?, ?, ?, ?, ?, ?, ?)")
      .run(to.club(), entry.id, to.change(), name(entry.kind), entry.thing, owner_of(entry),
           over_one(entry), contents);
}

} // namespace

services::KeptEntries keep_entries(Writing& to, const std::vector<journal::Entry>& entries,
                                   const services::Decide& decide) {
  services::KeptEntries told;
  std::set<std::string> things;
  for (const journal::Entry& entry : entries) {
    const std::string contents = contents_of(entry);
    const auto there = kept_under(to.db(), to.club(), entry.id);
    if (there && *there != contents && read_contents(to.db(), *there) != entry) {
      told.differing.push_back(entry.id);
      continue;
    }
    if (!there && is_full(to.db(), to.club(), entry.thing)) {
      told.crowded.push_back(entry.id);
      continue;
    }
    if (!there) {
      add(to, entry, contents);
    }
    told.kept.push_back(entry.id);
    things.insert(entry.thing);
  }
  if (things.empty()) {
    return told;
  }
  const EntriesAround around(to.db(), to.club(), things);
  const services::Decision decision = decide(around);
  keep_records(to, decision.records);
  for (const std::string& id : decision.visits_out) {
    withdraw_one<green::Visit>(to, id);
  }
  for (const std::string& id : decision.readings_out) {
    withdraw_one<green::Reading>(to, id);
  }
  for (const std::string& id : decision.works_out) {
    withdraw_one<green::Work>(to, id);
  }
  told.receipt = to.receipt;
  return told;
}

services::EntriesPage entries_since(Connection& db, std::int64_t club, std::int64_t since,
                                    int limit) {
  services::EntriesPage page;
  page.next = since;
  Statement& row = db.use(kNewEntriesSql);
  row.start(club, since, limit);
  while (row.next()) {
    page.next = row.integer();
    page.entries.push_back(read_contents(db, row.text()));
  }
  return page;
}

std::vector<journal::Entry> branched(Connection& db, std::int64_t club) {
  // A chain begins once, and each further entry lies over another one of it that
  // no other lies over.
  Statement& row = db.use(
      "SELECT thing FROM entry WHERE club = ?1 AND over_one IS NULL "
      "UNION SELECT thing FROM entry WHERE club = ?1 GROUP BY thing, over_one HAVING count(*) > 1 "
      "UNION SELECT thing FROM entry WHERE club = ?1 GROUP BY thing "
      "HAVING sum(over_one = '') IS NOT 1 "
      "UNION SELECT e.thing FROM entry e WHERE e.club = ?1 AND e.over_one <> '' AND NOT EXISTS "
      "(SELECT 1 FROM entry p WHERE p.club = e.club AND p.id = e.over_one AND p.thing = e.thing)");
  row.start(club);
  std::vector<std::string> things;
  while (row.next()) {
    things.push_back(row.text());
  }
  std::vector<journal::Entry> all;
  for (const std::string& thing : things) {
    entries_of(db, club, thing, all);
  }
  return all;
}

std::int64_t unreadable_entries(Connection& db) {
  std::int64_t wrong = 0;
  Statement rows(db.raw(), db.path(), "SELECT id, kind, thing, contents FROM entry");
  while (rows.next()) {
    const std::string id = rows.text();
    const std::string kind = rows.text();
    const std::string thing = rows.text();
    const auto entry = parse_contents(rows.text());
    const bool same =
        entry && entry->id == id && name(entry->kind) == kind && entry->thing == thing;
    wrong += same ? 0 : 1;
  }
  return wrong;
}

} // namespace baize::store_sqlite
