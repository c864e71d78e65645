// Works with their greens and parameters.
#include "kind.h"

namespace baize::store_sqlite {

const char* const Kind<green::Work>::table = "work";
const char* const Kind<green::Work>::columns =
    "r.kind, r.day, r.until_day, r.at_minute, r.half, r.disruptive, r.note";
const char* const Kind<green::Work>::joins = "";

const char* const Kind<green::Work>::withdrawn = "r.withdrawn";

std::string Kind<green::Work>::id(const green::Work& work) {
  return work.id;
}

void Kind<green::Work>::insert(Writing& to, std::int64_t record, int revision,
                               const green::Work& work) {
  Connection& db = to.db();
  db.use("INSERT INTO work_revision (record, revision, change, kind, day, until_day, at_minute, "
         "half, disruptive, note, file, line, withdrawn) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, "
         "?, ?)")
      .run(record, revision, to.change(), work.kind, work.day, work.until, work.at,
           Blank{work.half}, work.disruptive, work.note, Blank{work.source.file}, work.source.line,
           to.withdrawing);
  const std::int64_t key = db.last_key();
  int place = 0;
  for (const std::string& green : work.greens) {
    db.use("INSERT INTO work_green (work, place, green) VALUES (?, ?, ?)")
        .run(key, place++, to.green(green, work.source));
  }
  place = 0;
  for (const green::Parameter& parameter : work.parameters) {
    db.use("INSERT INTO work_parameter (work, place, name, number, word) VALUES (?, ?, ?, ?, ?)")
        .run(key, place++, parameter.name, parameter.number, Blank{parameter.word});
  }
}

green::Work Kind<green::Work>::read(Connection& db, std::int64_t key, std::string id,
                                    Statement& row) {
  green::Work work;
  work.id = std::move(id);
  work.kind = row.text();
  work.day = row.day();
  work.until = row.maybe_day();
  work.at = row.maybe_minute();
  work.half = row.text();
  work.disruptive = row.maybe_flag();
  work.note = row.text();
  Statement& greens = db.use("SELECT g.id FROM work_green w JOIN green g ON g.key = w.green "
                             "WHERE w.work = ? ORDER BY w.place");
  greens.start(key);
  while (greens.next()) {
    work.greens.push_back(greens.text());
  }
  Statement& parameters =
      db.use("SELECT name, number, word FROM work_parameter WHERE work = ? ORDER BY place");
  parameters.start(key);
  while (parameters.next()) {
    green::Parameter parameter;
    parameter.name = parameters.text();
    parameter.number = parameters.maybe_real();
    parameter.word = parameters.text();
    work.parameters.push_back(std::move(parameter));
  }
  return work;
}

} // namespace baize::store_sqlite
