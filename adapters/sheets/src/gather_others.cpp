#include "baize/green/kinds.h"
#include "gather.h"
#include "names.h"

namespace baize::sheets {
namespace {

/// Files with one record a row: `make` turns a good row into a record, or
/// returns false where it found a problem.
template <class Row, class Record, class Make>
void one_a_row(const services::ReceivedFile& file, Gathered& all, std::vector<Record>& records,
               Make make) {
  TableReader<Row> table(file, all.findings);
  std::vector<std::size_t>& owners = all.owners[file.name];
  int rows = 0;
  for (Row row; table.next(row);) {
    ++rows;
    Record record{};
    record.source = {file.name, table.cells().line};
    if (table.good() && make(row, record, table)) {
      owners.push_back(records.size());
      records.push_back(std::move(record));
    }
  }
  report(file, table, rows, records.size(), all);
}

bool unit_fits(const ReadingRow& row, const TableReader<ReadingRow>& table, Findings& findings) {
  const green::MeasuredField* kind = green::find_reading_kind(row.kind);
  if (row.unit.empty() || kind == nullptr || row.unit == kind->rule.unit) {
    return true;
  }
  findings.problem({"other_unit",
                    "unit",
                    row.unit,
                    "'" + std::string(kind->rule.unit) + "' for " + row.kind + ", or empty",
                    {}},
                   table.where("unit"));
  return false;
}

} // namespace

void gather_club(const services::ReceivedFile& file, Gathered& all) {
  std::vector<green::Club> clubs;
  one_a_row<ClubRow>(file, all, clubs, [&](const ClubRow& row, green::Club& club, auto& table) {
    if (!clubs.empty()) {
      all.findings.problem(
          {"row_too_many", "club", row.club, "the only row: a set of files holds one club", {}},
          table.where());
      return false;
    }
    club.id = row.club;
    club.name = row.name.empty() ? row.club : row.name;
    club.latitude_deg = row.latitude_deg;
    club.longitude_deg = row.longitude_deg;
    club.elevation_m = row.elevation_m;
    return true;
  });
  if (!clubs.empty()) {
    all.records.club = clubs.front();
  } else if (all.findings.problems_of(file.name) == 0) {
    all.findings.problem({"no_row", "club", {}, "given in one row under the header line", {}},
                         {file.name, 0, {}});
  }
}

void gather_observers(const services::ReceivedFile& file, Gathered& all) {
  one_a_row<ObserverRow>(file, all, all.records.observers,
                         [](const ObserverRow& row, green::Observer& observer, auto&) {
                           observer.id = row.observer;
                           observer.name = row.name;
                           observer.since = row.since;
                           return true;
                         });
}

void gather_readings(const services::ReceivedFile& file, Gathered& all) {
  ReadingIds ids;
  one_a_row<ReadingRow>(file, all, all.records.readings,
                        [&](ReadingRow& row, green::Reading& reading, auto& table) {
                          if (!unit_fits(row, table, all.findings)) {
                            return false;
                          }
                          reading.green = row.green;
                          reading.spot = row.spot;
                          reading.observer = row.observer;
                          reading.day = *row.day;
                          reading.at = row.at;
                          reading.kind = row.kind;
                          reading.value = *row.value;
                          reading.device = row.device;
                          reading.rod_length_mm = row.rod_length_mm;
                          reading.note = row.note;
                          reading.id = row.reading;
                          all.reading_named.push_back(!row.reading.empty());
                          if (reading.id.empty()) {
                            reading.id = ids.peek(reading);
                            ids.take(reading);
                          }
                          return true;
                        });
}

void gather_works(const services::ReceivedFile& file, Gathered& all) {
  one_a_row<WorkRow>(file, all, all.records.works, [&](WorkRow& row, green::Work& work, auto&) {
    work.kind = row.kind;
    work.day = *row.day;
    work.until = row.until;
    work.at = row.at;
    work.greens = green_list(row.greens, all.records.greens);
    work.half = row.half;
    work.disruptive = row.disruptive;
    work.parameters = in_table_order(row.kind, std::move(row.parameters));
    work.note = row.note;
    work.id = row.work.empty() ? natural_id(work) : row.work;
    return true;
  });
}

void gather_fixtures(const services::ReceivedFile& file, Gathered& all) {
  one_a_row<FixtureRow>(file, all, all.records.fixtures,
                        [](const FixtureRow& row, green::Fixture& fixture, auto&) {
                          fixture.name = row.name;
                          fixture.days = {*row.day, row.until.value_or(*row.day)};
                          fixture.importance = row.importance.value_or(1);
                          fixture.score_wanted = row.score_wanted;
                          fixture.speed_wanted = row.speed_wanted;
                          fixture.id = row.fixture.empty() ? natural_id(fixture) : row.fixture;
                          return true;
                        });
}

void gather_standards(const services::ReceivedFile& file, Gathered& all) {
  one_a_row<StandardRow>(file, all, all.records.standards,
                         [](const StandardRow& row, green::Standard& standard, auto&) {
                           standard.green = row.green;
                           standard.from = row.season_from;
                           standard.to = row.season_to;
                           standard.score = *row.score;
                           return true;
                         });
}

} // namespace baize::sheets
