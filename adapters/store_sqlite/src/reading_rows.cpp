// Any other measured quantity.
#include "kind.h"

namespace baize::store_sqlite {

const char* const Kind<green::Reading>::table = "reading";
const char* const Kind<green::Reading>::columns =
    "g.id, r.spot, o.id, r.day, r.at_minute, r.kind, r.value, r.device, r.rod_length_mm, r.note";
const char* const Kind<green::Reading>::joins =
    "JOIN green g ON g.key = r.green LEFT JOIN observer o ON o.key = r.observer";

const char* const Kind<green::Reading>::withdrawn = "r.withdrawn";

std::string Kind<green::Reading>::id(const green::Reading& reading) {
  return reading.id;
}

void Kind<green::Reading>::insert(Writing& to, std::int64_t record, int revision,
                                  const green::Reading& reading) {
  to.db()
      .use("INSERT INTO reading_revision (record, revision, change, green, spot, observer, day, "
           "at_minute, kind, value, device, rod_length_mm, note, file, line, withdrawn) "
           "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
      .run(record, revision, to.change(), to.green(reading.green, reading.source),
           Blank{reading.spot}, to.observer(reading.observer), reading.day, reading.at,
           reading.kind, reading.value, reading.device, reading.rod_length_mm, reading.note,
           Blank{reading.source.file}, reading.source.line, to.withdrawing);
}

green::Reading Kind<green::Reading>::read(Connection& /*db*/, std::int64_t /*key*/, std::string id,
                                          Statement& row) {
  green::Reading reading;
  reading.id = std::move(id);
  reading.green = row.text();
  reading.spot = row.text();
  reading.observer = row.text();
  reading.day = row.day();
  reading.at = row.maybe_minute();
  reading.kind = row.text();
  reading.value = row.real();
  reading.device = row.text();
  reading.rod_length_mm = row.maybe_real();
  reading.note = row.text();
  return reading;
}

} // namespace baize::store_sqlite
