#pragma once

#include "baize/services/sheets_port.h"
#include "table.h"

#include <map>
#include <set>
#include <unordered_map>

namespace baize::sheets {

/// Lines of the rolls of a run, in the order of its rolls.
struct RunLines {
  std::vector<int> rolls;
  int total = 0; ///< line of the run's total, or 0
};

struct VisitLines {
  std::vector<RunLines> runs;
  int in_visits = 0;   ///< its line in visits.csv, or 0
  bool named = false;  ///< its id stands in a file
  bool broken = false; ///< a row of it had a problem: its other rules are not tried
};

/// Everything read from the files, before the records are checked against each other.
struct Gathered {
  green::Records records;              ///< in the order of the files
  std::vector<VisitLines> visit_lines; ///< one for each visit
  std::vector<bool> reading_named;     ///< by reading: its id stands in the file
  /// Which record each good row belongs to, by file: for writing rows back.
  std::map<std::string, std::vector<std::size_t>> owners;
  /// Column names as the files write them: file, our name, their name.
  std::map<std::string, std::map<std::string, std::string>> written;
  std::vector<services::FileReport> files;
  std::string visits_file;       ///< its name as it was given
  std::set<std::string> implied; ///< observers that no file declares
  Findings findings;
};

/// Reads every file of the set.
Gathered gather(const std::vector<services::ReceivedFile>& files);

/// The file of that name, whatever its letters' case and folder; or null.
const services::ReceivedFile* find_file(const std::vector<services::ReceivedFile>& files,
                                        std::string_view name);
/// "ROLLS.CSV" in a folder is "rolls.csv".
std::string bare_name(std::string_view name);
/// Is it a file of the set?
bool known_file(const services::ReceivedFile& file);

void gather_greens(const services::ReceivedFile& file, Gathered& all);
void gather_rolls(const services::ReceivedFile& file, Gathered& all);
/// After the rolls: a row joins the visit it names.
void gather_visits(const services::ReceivedFile& file, Gathered& all);
void gather_readings(const services::ReceivedFile& file, Gathered& all);
/// After the greens, whose names a list may hold.
void gather_works(const services::ReceivedFile& file, Gathered& all);
void gather_fixtures(const services::ReceivedFile& file, Gathered& all);
void gather_standards(const services::ReceivedFile& file, Gathered& all);
void gather_observers(const services::ReceivedFile& file, Gathered& all);
void gather_club(const services::ReceivedFile& file, Gathered& all);

/// Remembers column names and counts for the file's report.
template <class Row>
void report(const services::ReceivedFile& file, const TableReader<Row>& table, int rows,
            std::size_t records, Gathered& all) {
  for (const LayoutColumn& column : table.layout().columns) {
    if (column.heading >= 0) {
      const auto at = static_cast<std::size_t>(column.heading);
      all.written[file.name][columns<Row>()[at].name] = column.name;
    }
  }
  all.files.push_back({file.name, rows, static_cast<int>(records), 0});
}

} // namespace baize::sheets
