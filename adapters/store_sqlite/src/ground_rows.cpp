// Greens with their halves and spots, and observers.
#include "kind.h"

namespace baize::store_sqlite {

const char* const Kind<green::Green>::table = "green";
const char* const Kind<green::Green>::columns = "r.name, r.grass, r.grass_mix, r.area_m2";
const char* const Kind<green::Green>::joins = "";

const char* const Kind<green::Green>::withdrawn = "0";

std::string Kind<green::Green>::id(const green::Green& green) {
  return green.id;
}

void Kind<green::Green>::insert(Writing& to, std::int64_t record, int revision,
                                const green::Green& green) {
  Connection& db = to.db();
  db.use("INSERT INTO green_revision (record, revision, change, name, grass, grass_mix, area_m2, "
         "file, line) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)")
      .run(record, revision, to.change(), green.name,
           green.grass == green::Grass::warm ? "warm" : "cool", green.grass_mix, green.area_m2,
           Blank{green.source.file}, green.source.line);
  const std::int64_t key = db.last_key();
  int place = 0;
  for (const std::string& half : green.halves) {
    db.use("INSERT INTO green_half (green, place, id) VALUES (?, ?, ?)").run(key, place++, half);
  }
  place = 0;
  for (const green::Spot& spot : green.spots) {
    db.use("INSERT INTO spot (green, place, id, bearing_deg, half) VALUES (?, ?, ?, ?, ?)")
        .run(key, place++, spot.id, spot.bearing_deg, Blank{spot.half});
  }
}

green::Green Kind<green::Green>::read(Connection& db, std::int64_t key, std::string id,
                                      Statement& row) {
  green::Green green;
  green.id = std::move(id);
  green.name = row.text();
  green.grass = row.text() == "warm" ? green::Grass::warm : green::Grass::cool;
  green.grass_mix = row.text();
  green.area_m2 = row.maybe_real();
  Statement& halves = db.use("SELECT id FROM green_half WHERE green = ? ORDER BY place");
  halves.start(key);
  while (halves.next()) {
    green.halves.push_back(halves.text());
  }
  Statement& spots =
      db.use("SELECT id, bearing_deg, half FROM spot WHERE green = ? ORDER BY place");
  spots.start(key);
  while (spots.next()) {
    green::Spot spot;
    spot.id = spots.text();
    spot.bearing_deg = spots.maybe_real();
    spot.half = spots.text();
    green.spots.push_back(std::move(spot));
  }
  return green;
}

const char* const Kind<green::Observer>::table = "observer";
const char* const Kind<green::Observer>::columns = "r.name, r.since";
const char* const Kind<green::Observer>::joins = "";

const char* const Kind<green::Observer>::withdrawn = "0";

std::string Kind<green::Observer>::id(const green::Observer& observer) {
  return observer.id;
}

void Kind<green::Observer>::insert(Writing& to, std::int64_t record, int revision,
                                   const green::Observer& observer) {
  to.db()
      .use("INSERT INTO observer_revision (record, revision, change, name, since, file, line) "
           "VALUES (?, ?, ?, ?, ?, ?, ?)")
      .run(record, revision, to.change(), observer.name, observer.since,
           Blank{observer.source.file}, observer.source.line);
}

green::Observer Kind<green::Observer>::read(Connection& /*db*/, std::int64_t /*key*/,
                                            std::string id, Statement& row) {
  green::Observer observer;
  observer.id = std::move(id);
  observer.name = row.text();
  observer.since = row.maybe_day();
  return observer;
}

} // namespace baize::store_sqlite
