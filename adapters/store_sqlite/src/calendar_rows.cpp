// Fixtures and standards.
#include "kind.h"

namespace baize::store_sqlite {

const char* const Kind<green::Fixture>::table = "fixture";
const char* const Kind<green::Fixture>::columns =
    "r.name, r.first_day, r.last_day, r.importance, r.score_wanted, r.speed_wanted_m";
const char* const Kind<green::Fixture>::joins = "";

const char* const Kind<green::Fixture>::withdrawn = "0";

std::string Kind<green::Fixture>::id(const green::Fixture& fixture) {
  return fixture.id;
}

void Kind<green::Fixture>::insert(Writing& to, std::int64_t record, int revision,
                                  const green::Fixture& fixture) {
  to.db()
      .use("INSERT INTO fixture_revision (record, revision, change, name, first_day, last_day, "
           "importance, score_wanted, speed_wanted_m, file, line) "
           "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
      .run(record, revision, to.change(), fixture.name, fixture.days.first, fixture.days.last,
           fixture.importance, fixture.score_wanted, fixture.speed_wanted,
           Blank{fixture.source.file}, fixture.source.line);
}

green::Fixture Kind<green::Fixture>::read(Connection& /*db*/, std::int64_t /*key*/, std::string id,
                                          Statement& row) {
  green::Fixture fixture;
  fixture.id = std::move(id);
  fixture.name = row.text();
  fixture.days.first = row.day();
  fixture.days.last = row.day();
  fixture.importance = row.whole();
  fixture.score_wanted = row.maybe_real();
  fixture.speed_wanted = row.maybe_length();
  return fixture;
}

const char* const Kind<green::Standard>::table = "standard";
const char* const Kind<green::Standard>::columns =
    "g.id, r.from_month_day, r.to_month_day, r.score";
const char* const Kind<green::Standard>::joins = "LEFT JOIN green g ON g.key = r.green";

// A standard has no id of its own: green and season tell it from the others.
const char* const Kind<green::Standard>::withdrawn = "0";

std::string Kind<green::Standard>::id(const green::Standard& standard) {
  return fmt::format("{}/{}/{}", standard.green, standard.from ? units::iso(*standard.from) : "",
                     standard.to ? units::iso(*standard.to) : "");
}

void Kind<green::Standard>::insert(Writing& to, std::int64_t record, int revision,
                                   const green::Standard& standard) {
  std::optional<std::int64_t> green;
  if (!standard.green.empty()) {
    green = to.green(standard.green, standard.source);
  }
  to.db()
      .use("INSERT INTO standard_revision (record, revision, change, green, from_month_day, "
           "to_month_day, score, file, line) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)")
      .run(record, revision, to.change(), green, standard.from, standard.to, standard.score,
           Blank{standard.source.file}, standard.source.line);
}

green::Standard Kind<green::Standard>::read(
    Connection& /*db*/, std::int64_t /*key*/,
    std::string /*id*/, // NOLINT(performance-unnecessary-value-param): other kinds keep it
    Statement& row) {
  green::Standard standard;
  standard.green = row.text();
  standard.from = row.maybe_month_day();
  standard.to = row.maybe_month_day();
  standard.score = row.real();
  return standard;
}

} // namespace baize::store_sqlite
