#include "load.h"
#include "record_json.h"
#include "weather_rows.h"

#include <map>

namespace baize::store_sqlite {

namespace {

struct Dated {
  int number = 0;
  std::int64_t change = 0;
  std::string contents;
};

template <class Record>
std::vector<Dated> revisions_of(Connection& db, std::int64_t club, const std::string& id) {
  static const std::string sql =
      select_revisions<Record>("i.club = ? AND i.id = ? ORDER BY r.revision");
  std::vector<Dated> all;
  Statement& rows = db.use(sql);
  rows.start(club, id);
  while (rows.next()) {
    const auto one = read_revision<Record>(db, rows);
    std::string contents = json_text(one.record);
    if (one.withdrawn) {
      contents.insert(1, R"("withdrawn":true,)");
    }
    all.push_back({one.revision, one.change, std::move(contents)});
  }
  return all;
}

std::vector<Dated> club_revisions(Connection& db, std::int64_t club) {
  Statement& rows = db.use("SELECT i.id, r.name, r.latitude_deg, r.longitude_deg, r.elevation_m, "
                           "r.file, r.line, r.revision, r.change FROM club i JOIN club_revision r "
                           "ON r.record = i.key WHERE i.key = ? ORDER BY r.revision");
  rows.start(club);
  std::vector<Dated> all;
  while (rows.next()) {
    green::Club read;
    read.id = rows.text();
    read.name = rows.text();
    read.latitude_deg = rows.maybe_real();
    read.longitude_deg = rows.maybe_real();
    read.elevation_m = rows.maybe_real();
    read.source.file = rows.text();
    read.source.line = rows.whole();
    const int number = rows.whole();
    all.push_back({number, rows.integer(), json_text(read)});
  }
  return all;
}

std::vector<Dated> day_revisions(Connection& db, std::int64_t club, const std::string& id) {
  std::vector<Dated> all;
  if (const auto day = units::parse_iso_day(id)) {
    for (const auto& one : weather_revisions(db, club, *day)) {
      all.push_back({one.revision, one.change, json_text(one.record)});
    }
  }
  return all;
}

using Look = std::vector<Dated> (*)(Connection&, std::int64_t, const std::string&);

const std::map<std::string, Look>& looks() {
  static const std::map<std::string, Look> all{
      {"club", [](Connection& db, std::int64_t club,
                  const std::string& /*id*/) { return club_revisions(db, club); }},
      {"green", revisions_of<green::Green>},
      {"observer", revisions_of<green::Observer>},
      {"visit", revisions_of<green::Visit>},
      {"reading", revisions_of<green::Reading>},
      {"work", revisions_of<green::Work>},
      {"fixture", revisions_of<green::Fixture>},
      {"standard", revisions_of<green::Standard>},
      {"weather_day", day_revisions}};
  return all;
}

} // namespace

std::vector<services::Revision> load_history(Connection& db, std::int64_t club,
                                             const std::string& kind, const std::string& id) {
  const auto look = looks().find(kind);
  if (look == looks().end()) {
    fail("no_such_kind", "kind", kind,
         "club, green, observer, visit, reading, work, fixture, standard or weather_day");
  }
  std::vector<services::Revision> all;
  for (Dated& one : look->second(db, club, id)) {
    Statement& row = db.use("SELECT author, recorded_at FROM change WHERE key = ?");
    row.start(one.change);
    row.next();
    services::Revision revision;
    revision.number = one.number;
    revision.author = row.text();
    revision.at = row.text();
    revision.contents = std::move(one.contents);
    row.stop();
    all.push_back(std::move(revision));
  }
  if (all.empty()) {
    fail("no_such_record", kind, id, "a record of the club");
  }
  return all;
}

} // namespace baize::store_sqlite
