#include "kind.h"

#include <algorithm>
#include <set>

namespace baize::store_sqlite {

green::Club load_club(Connection& db, std::int64_t club) {
  Statement& row = db.use("SELECT i.id, r.name, r.latitude_deg, r.longitude_deg, r.elevation_m, "
                          "r.file, r.line FROM club i JOIN club_revision r ON r.record = i.key "
                          "WHERE i.key = ? ORDER BY r.revision DESC LIMIT 1");
  row.start(club);
  green::Club read;
  if (row.next()) {
    read.id = row.text();
    read.name = row.text();
    read.latitude_deg = row.maybe_real();
    read.longitude_deg = row.maybe_real();
    read.elevation_m = row.maybe_real();
    read.source.file = row.text();
    read.source.line = row.whole();
  }
  row.stop();
  return read;
}

void keep_club(Writing& to, const green::Club& club) {
  green::Club silent;
  silent.id = club.id;
  silent.source = club.source;
  int revision = 1;
  if (to.new_club()) {
    ++to.receipt.added;
  } else {
    if (club == silent) {
      return;
    }
    green::Club current = load_club(to.db(), to.club());
    current.source = club.source;
    if (current == club) {
      ++to.receipt.unchanged;
      return;
    }
    Statement& row = to.db().use("SELECT max(revision) FROM club_revision WHERE record = ?");
    row.start(to.club());
    row.next();
    revision = row.whole() + 1;
    row.stop();
    ++to.receipt.corrected;
  }
  to.db()
      .use("INSERT INTO club_revision (record, revision, change, name, latitude_deg, "
           "longitude_deg, elevation_m, file, line) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)")
      .run(to.club(), revision, to.change(), club.name, club.latitude_deg, club.longitude_deg,
           club.elevation_m, Blank{club.source.file}, club.source.line);
}

std::vector<std::string> load_walk(Connection& db, std::int64_t club) {
  Statement& rows = db.use(
      "SELECT g.id FROM walk_green w JOIN green g ON g.key = w.green WHERE w.walk = (SELECT key "
      "FROM walk WHERE club = ? ORDER BY revision DESC LIMIT 1) ORDER BY w.place");
  rows.start(club);
  std::vector<std::string> ids;
  while (rows.next()) {
    ids.push_back(rows.text());
  }
  return ids;
}

std::vector<std::string> merged_walk(const std::vector<std::string>& before,
                                     const std::vector<std::string>& written) {
  const std::set<std::string> known(before.begin(), before.end());
  const std::set<std::string> named(written.begin(), written.end());
  // The places of known greens are filled anew in the written order ...
  std::vector<std::string> order = before;
  auto next = written.begin();
  for (std::string& id : order) {
    if (named.contains(id)) {
      next = std::find_if(next, written.end(), [&](const auto& w) { return known.contains(w); });
      id = *next++;
    }
  }
  // ... and a new green stands behind the one written before it; a new first one
  // stands before the one written after it, and alone at the end.
  for (std::size_t i = 0; i < written.size(); ++i) {
    if (known.contains(written[i])) {
      continue;
    }
    auto place = order.end();
    if (i > 0) {
      place = std::next(std::find(order.begin(), order.end(), written[i - 1]));
    } else if (const auto first = std::find_if(written.begin(), written.end(),
                                               [&](const auto& w) { return known.contains(w); });
               first != written.end()) {
      place = std::find(order.begin(), order.end(), *first);
    }
    order.insert(place, written[i]);
  }
  return order;
}

void keep_walk(Writing& to, const std::vector<green::Green>& greens) {
  std::vector<std::string> written;
  std::set<std::string> seen;
  for (const green::Green& green : greens) {
    if (seen.insert(green.id).second) {
      written.push_back(green.id);
    }
  }
  const std::vector<std::string> before = load_walk(to.db(), to.club());
  const std::vector<std::string> order = merged_walk(before, written);
  if (order == before) {
    return;
  }
  to.db()
      .use("INSERT INTO walk (club, revision, change) VALUES (?1, 1 + (SELECT "
           "coalesce(max(revision), 0) FROM walk WHERE club = ?1), ?2)")
      .run(to.club(), to.change());
  const std::int64_t walk = to.db().last_key();
  for (std::size_t i = 0; i < order.size(); ++i) {
    to.db()
        .use("INSERT INTO walk_green (walk, place, green) VALUES (?, ?, ?)")
        .run(walk, static_cast<int>(i), to.green(order[i], {}));
  }
}

} // namespace baize::store_sqlite
