#pragma once

#include "baize/services/sheets_port.h"

namespace baize::sheets {

/// The documented set of CSV files (docs/howto/records.md): club.csv, greens.csv
/// and rolls.csv, and where there is something to say observers.csv, visits.csv,
/// readings.csv, works.csv, fixtures.csv and standards.csv.
class CsvSheets final : public services::Sheets {
 public:
  /// Reads and checks every row. All problems are collected, up to 1000; a last
  /// one tells how many more there were. A record without an id gets one from
  /// what makes it that record, e.g. "2025-04-03T0810/ab/7" for a visit.
  services::SheetsReading read(const std::vector<services::ReceivedFile>& files,
                               units::Day today) const override;

  /// Files in the order given above. A received file that cannot be read is
  /// written anew; one that is no file of the set is handed back as it came.
  std::vector<services::ReceivedFile>
  write(const green::Records& records,
        const std::vector<services::ReceivedFile>& received) const override;
};

} // namespace baize::sheets
