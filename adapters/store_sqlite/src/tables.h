#pragma once

namespace baize::store_sqlite {

// Version 1. A record is a row of a table that holds its id only (visit), and
// its contents are rows of a table of revisions (visit_revision) with those of
// its parts (run, roll, mark). `line` and `file` say where it was read from.
inline constexpr const char* kTablesOfRecords = R"sql(
CREATE TABLE club (
  key INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE CHECK (id <> '')) STRICT;
CREATE TABLE change (
  key INTEGER PRIMARY KEY, club INTEGER NOT NULL REFERENCES club,
  author TEXT NOT NULL, recorded_at TEXT NOT NULL) STRICT;
CREATE TABLE club_revision (
  key INTEGER PRIMARY KEY, record INTEGER NOT NULL REFERENCES club,
  revision INTEGER NOT NULL CHECK (revision >= 1), change INTEGER NOT NULL REFERENCES change,
  name TEXT NOT NULL, latitude_deg REAL, longitude_deg REAL, elevation_m REAL,
  file TEXT, line INTEGER NOT NULL, UNIQUE (record, revision)) STRICT;

CREATE TABLE green (
  key INTEGER PRIMARY KEY, club INTEGER NOT NULL REFERENCES club,
  id TEXT NOT NULL CHECK (id <> ''), UNIQUE (club, id)) STRICT;
CREATE TABLE green_revision (
  key INTEGER PRIMARY KEY, record INTEGER NOT NULL REFERENCES green,
  revision INTEGER NOT NULL CHECK (revision >= 1), change INTEGER NOT NULL REFERENCES change,
  name TEXT NOT NULL, grass TEXT NOT NULL CHECK (grass IN ('cool', 'warm')),
  grass_mix TEXT NOT NULL, area_m2 REAL,
  file TEXT, line INTEGER NOT NULL, UNIQUE (record, revision)) STRICT;
CREATE TABLE green_half (
  green INTEGER NOT NULL REFERENCES green_revision, place INTEGER NOT NULL, id TEXT NOT NULL,
  PRIMARY KEY (green, place)) STRICT, WITHOUT ROWID;
CREATE TABLE spot (
  green INTEGER NOT NULL REFERENCES green_revision, place INTEGER NOT NULL, id TEXT NOT NULL,
  bearing_deg REAL, half TEXT, PRIMARY KEY (green, place)) STRICT, WITHOUT ROWID;
CREATE TABLE walk (
  key INTEGER PRIMARY KEY, club INTEGER NOT NULL REFERENCES club,
  revision INTEGER NOT NULL CHECK (revision >= 1), change INTEGER NOT NULL REFERENCES change,
  UNIQUE (club, revision)) STRICT;
CREATE TABLE walk_green (
  walk INTEGER NOT NULL REFERENCES walk, place INTEGER NOT NULL,
  green INTEGER NOT NULL REFERENCES green, PRIMARY KEY (walk, place)) STRICT, WITHOUT ROWID;

CREATE TABLE observer (
  key INTEGER PRIMARY KEY, club INTEGER NOT NULL REFERENCES club,
  id TEXT NOT NULL CHECK (id <> ''), UNIQUE (club, id)) STRICT;
CREATE TABLE observer_revision (
  key INTEGER PRIMARY KEY, record INTEGER NOT NULL REFERENCES observer,
  revision INTEGER NOT NULL CHECK (revision >= 1), change INTEGER NOT NULL REFERENCES change,
  name TEXT NOT NULL, since TEXT,
  file TEXT, line INTEGER NOT NULL, UNIQUE (record, revision)) STRICT;
)sql";

inline constexpr const char* kTablesOfVisits = R"sql(
CREATE TABLE visit (
  key INTEGER PRIMARY KEY, club INTEGER NOT NULL REFERENCES club,
  id TEXT NOT NULL CHECK (id <> ''), UNIQUE (club, id)) STRICT;
CREATE TABLE visit_revision (
  key INTEGER PRIMARY KEY, record INTEGER NOT NULL REFERENCES visit,
  revision INTEGER NOT NULL CHECK (revision >= 1), change INTEGER NOT NULL REFERENCES change,
  green INTEGER NOT NULL REFERENCES green, half TEXT, observer INTEGER REFERENCES observer,
  day TEXT NOT NULL, from_minute INTEGER, to_minute INTEGER,
  hours_since_mowing REAL, hours_since_rolling REAL, dew TEXT, wind TEXT, surface TEXT,
  note TEXT NOT NULL,
  file TEXT, line INTEGER NOT NULL, UNIQUE (record, revision)) STRICT;
CREATE TABLE run (
  visit INTEGER NOT NULL REFERENCES visit_revision, place INTEGER NOT NULL,
  spot TEXT, direction TEXT NOT NULL CHECK (direction IN ('out', 'back')),
  total INTEGER, total_of INTEGER, PRIMARY KEY (visit, place)) STRICT, WITHOUT ROWID;
-- marks: how many were noted; NULL where nobody looked.
CREATE TABLE roll (
  visit INTEGER NOT NULL, run INTEGER NOT NULL, place INTEGER NOT NULL,
  roll_order INTEGER NOT NULL, distance_m REAL, marks INTEGER, score INTEGER,
  PRIMARY KEY (visit, run, place),
  FOREIGN KEY (visit, run) REFERENCES run (visit, place)) STRICT, WITHOUT ROWID;
CREATE TABLE mark (
  visit INTEGER NOT NULL, run INTEGER NOT NULL, roll INTEGER NOT NULL, place INTEGER NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('bobble', 'chatter', 'snake')), seconds REAL,
  PRIMARY KEY (visit, run, roll, place),
  FOREIGN KEY (visit, run, roll) REFERENCES roll (visit, run, place)) STRICT, WITHOUT ROWID;

CREATE TABLE reading (
  key INTEGER PRIMARY KEY, club INTEGER NOT NULL REFERENCES club,
  id TEXT NOT NULL CHECK (id <> ''), UNIQUE (club, id)) STRICT;
CREATE TABLE reading_revision (
  key INTEGER PRIMARY KEY, record INTEGER NOT NULL REFERENCES reading,
  revision INTEGER NOT NULL CHECK (revision >= 1), change INTEGER NOT NULL REFERENCES change,
  green INTEGER NOT NULL REFERENCES green, spot TEXT, observer INTEGER REFERENCES observer,
  day TEXT NOT NULL, at_minute INTEGER, kind TEXT NOT NULL, value REAL NOT NULL,
  device TEXT NOT NULL, rod_length_mm REAL, note TEXT NOT NULL,
  file TEXT, line INTEGER NOT NULL, UNIQUE (record, revision)) STRICT;
)sql";

inline constexpr const char* kTablesOfWorks = R"sql(
CREATE TABLE work (
  key INTEGER PRIMARY KEY, club INTEGER NOT NULL REFERENCES club,
  id TEXT NOT NULL CHECK (id <> ''), UNIQUE (club, id)) STRICT;
CREATE TABLE work_revision (
  key INTEGER PRIMARY KEY, record INTEGER NOT NULL REFERENCES work,
  revision INTEGER NOT NULL CHECK (revision >= 1), change INTEGER NOT NULL REFERENCES change,
  kind TEXT NOT NULL, day TEXT NOT NULL, until_day TEXT, at_minute INTEGER, half TEXT,
  disruptive INTEGER CHECK (disruptive IN (0, 1)), note TEXT NOT NULL,
  file TEXT, line INTEGER NOT NULL, UNIQUE (record, revision)) STRICT;
CREATE TABLE work_green (
  work INTEGER NOT NULL REFERENCES work_revision, place INTEGER NOT NULL,
  green INTEGER NOT NULL REFERENCES green, PRIMARY KEY (work, place)) STRICT, WITHOUT ROWID;
CREATE TABLE work_parameter (
  work INTEGER NOT NULL REFERENCES work_revision, place INTEGER NOT NULL,
  name TEXT NOT NULL, number REAL, word TEXT, PRIMARY KEY (work, place)) STRICT, WITHOUT ROWID;

CREATE TABLE fixture (
  key INTEGER PRIMARY KEY, club INTEGER NOT NULL REFERENCES club,
  id TEXT NOT NULL CHECK (id <> ''), UNIQUE (club, id)) STRICT;
CREATE TABLE fixture_revision (
  key INTEGER PRIMARY KEY, record INTEGER NOT NULL REFERENCES fixture,
  revision INTEGER NOT NULL CHECK (revision >= 1), change INTEGER NOT NULL REFERENCES change,
  name TEXT NOT NULL, first_day TEXT NOT NULL, last_day TEXT NOT NULL,
  importance INTEGER NOT NULL, score_wanted REAL, speed_wanted_m REAL,
  file TEXT, line INTEGER NOT NULL, UNIQUE (record, revision)) STRICT;

CREATE TABLE standard (
  key INTEGER PRIMARY KEY, club INTEGER NOT NULL REFERENCES club,
  id TEXT NOT NULL CHECK (id <> ''), UNIQUE (club, id)) STRICT;
CREATE TABLE standard_revision (
  key INTEGER PRIMARY KEY, record INTEGER NOT NULL REFERENCES standard,
  revision INTEGER NOT NULL CHECK (revision >= 1), change INTEGER NOT NULL REFERENCES change,
  green INTEGER REFERENCES green, from_month_day TEXT, to_month_day TEXT, score REAL NOT NULL,
  file TEXT, line INTEGER NOT NULL, UNIQUE (record, revision)) STRICT;

CREATE TABLE weather_day (
  club INTEGER NOT NULL REFERENCES club, day TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1), change INTEGER NOT NULL REFERENCES change,
  tmin_c REAL, tmax_c REAL, tmean_c REAL, rain_mm REAL,
  rain_trace INTEGER NOT NULL CHECK (rain_trace IN (0, 1)), et0_mm REAL, solar_mj_m2 REAL,
  wind_m_s REAL, wind_height_m REAL, dew_point_c REAL, humidity_max_pct REAL,
  humidity_min_pct REAL, PRIMARY KEY (club, day, revision)) STRICT, WITHOUT ROWID;

-- Each distinct content once, however often and under whatever name it came.
CREATE TABLE received_content (
  sha256 TEXT PRIMARY KEY CHECK (length(sha256) = 64), content BLOB NOT NULL) STRICT;
CREATE TABLE received_file (
  key INTEGER PRIMARY KEY, club INTEGER NOT NULL REFERENCES club, name TEXT NOT NULL,
  change INTEGER NOT NULL REFERENCES change,
  sha256 TEXT NOT NULL REFERENCES received_content) STRICT;
CREATE INDEX received_by_name ON received_file (club, name);
)sql";

// Version 2. Visits with the same words in shared_rolls are the same balls.
inline constexpr const char* kSharedRolls = R"sql(
ALTER TABLE visit_revision ADD COLUMN shared_rolls TEXT;
)sql";

// Version 3. Entries of phones as they arrived; `visit`: the one that a roll or
// a total says it belongs to; `over_one`: the only entry it was written over,
// blank where it was written over none, NULL where over several. A record made
// from entries may be withdrawn, and be there again in a later revision.
inline constexpr const char* kEntries = R"sql(
CREATE TABLE entry (
  arrival INTEGER PRIMARY KEY, club INTEGER NOT NULL REFERENCES club,
  id TEXT NOT NULL CHECK (length(id) = 36), change INTEGER NOT NULL REFERENCES change,
  kind TEXT NOT NULL CHECK (kind IN ('visit', 'roll', 'total', 'reading', 'work')),
  thing TEXT NOT NULL, visit TEXT, over_one TEXT, contents TEXT NOT NULL,
  UNIQUE (club, id)) STRICT;
CREATE INDEX entry_by_thing ON entry (club, thing, over_one);
CREATE INDEX entry_by_visit ON entry (club, visit, thing) WHERE visit IS NOT NULL;
CREATE INDEX visit_by_day ON visit_revision (day);
ALTER TABLE visit_revision ADD COLUMN
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1));
ALTER TABLE reading_revision ADD COLUMN
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1));
ALTER TABLE work_revision ADD COLUMN
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1));
)sql";

// Version 4. People, and what lets them in: of every token only its digest.
// These are no records: rows change and go, and no change is counted. Times are
// seconds since 1970 in UTC.
inline constexpr const char* kPeople = R"sql(
CREATE TABLE person (
  key INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE CHECK (id <> ''),
  name TEXT NOT NULL CHECK (name <> ''), name_key TEXT NOT NULL UNIQUE,
  password_hash TEXT NOT NULL CHECK (password_hash LIKE '$argon2id$%'),
  added INTEGER NOT NULL) STRICT;
CREATE TABLE person_role (
  person INTEGER NOT NULL REFERENCES person ON DELETE CASCADE,
  club INTEGER NOT NULL REFERENCES club,
  role TEXT NOT NULL CHECK (role IN ('reader', 'observer', 'agronomist', 'head_greenkeeper')),
  PRIMARY KEY (person, club)) STRICT, WITHOUT ROWID;
CREATE INDEX person_role_by_club ON person_role (club);
CREATE TABLE invitation (
  key INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE,
  digest TEXT NOT NULL UNIQUE CHECK (length(digest) = 64),
  club INTEGER NOT NULL REFERENCES club,
  role TEXT NOT NULL CHECK (role IN ('reader', 'observer', 'agronomist', 'head_greenkeeper')),
  invited_by TEXT NOT NULL, made INTEGER NOT NULL, ends INTEGER NOT NULL) STRICT;
CREATE TABLE reading_link (
  key INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE,
  digest TEXT NOT NULL UNIQUE CHECK (length(digest) = 64),
  club INTEGER NOT NULL REFERENCES club, label TEXT NOT NULL,
  made_by TEXT NOT NULL, made INTEGER NOT NULL, ends INTEGER NOT NULL) STRICT;
CREATE TABLE session (
  key INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE,
  digest TEXT NOT NULL UNIQUE CHECK (length(digest) = 64),
  person INTEGER REFERENCES person ON DELETE CASCADE,
  link INTEGER REFERENCES reading_link ON DELETE CASCADE,
  device TEXT NOT NULL, began INTEGER NOT NULL, seen INTEGER NOT NULL, ends INTEGER NOT NULL,
  CHECK ((person IS NULL) <> (link IS NULL))) STRICT;
CREATE INDEX session_by_person ON session (person) WHERE person IS NOT NULL;
CREATE INDEX session_by_link ON session (link) WHERE link IS NOT NULL;
)sql";

// Version 5. Photos: `entry` is made anew so that its kinds know them, row by row
// as it was; `visit` is of a photo the visit or work it belongs to. Their bytes
// lie apart, under the id of the photo.
inline constexpr const char* kPhotos = R"sql(
CREATE TABLE entry_anew (
  arrival INTEGER PRIMARY KEY, club INTEGER NOT NULL REFERENCES club,
  id TEXT NOT NULL CHECK (length(id) = 36), change INTEGER NOT NULL REFERENCES change,
  kind TEXT NOT NULL CHECK (kind IN ('visit', 'roll', 'total', 'reading', 'work', 'photo')),
  thing TEXT NOT NULL, visit TEXT, over_one TEXT, contents TEXT NOT NULL,
  UNIQUE (club, id)) STRICT;
INSERT INTO entry_anew (arrival, club, id, change, kind, thing, visit, over_one, contents)
  SELECT arrival, club, id, change, kind, thing, visit, over_one, contents FROM entry;
DROP TABLE entry;
ALTER TABLE entry_anew RENAME TO entry;
CREATE INDEX entry_by_thing ON entry (club, thing, over_one);
CREATE INDEX entry_by_visit ON entry (club, visit, thing) WHERE visit IS NOT NULL;
CREATE INDEX entry_of_photo ON entry (club, arrival) WHERE kind = 'photo';
CREATE TABLE photo (
  key INTEGER PRIMARY KEY, club INTEGER NOT NULL REFERENCES club,
  id TEXT NOT NULL CHECK (length(id) = 36), change INTEGER NOT NULL REFERENCES change,
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64),
  content BLOB NOT NULL CHECK (length(content) BETWEEN 1 AND 1572864),
  UNIQUE (club, id)) STRICT;
)sql";

// Version 6. Visits by the rolls that they share, as those of a day are found.
inline constexpr const char* kSharedRollsFound = R"sql(
CREATE INDEX visit_by_shared_rolls ON visit_revision (shared_rolls)
  WHERE shared_rolls IS NOT NULL;
)sql";

} // namespace baize::store_sqlite
