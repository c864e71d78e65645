#pragma once

#include "baize/services/store_port.h"

#include <string>
#include <vector>

namespace baize::services {

/// What one file would bring in.
struct FileReport {
  std::string name;
  int rows = 0;    ///< data rows read
  int records = 0; ///< records they make (six rolls are one visit)
  int problems = 0;
};

/// A set of record files, read and checked. All or nothing: with any problem,
/// `records` must not be kept.
struct SheetsReading {
  green::Records records;
  std::vector<FileReport> files;
  std::vector<units::Problem> problems; ///< place says "rolls.csv line 12 column score"
  std::vector<units::Problem> remarks;  ///< pointed out, refuses nothing
  bool good() const { return problems.empty(); }
};

/// Reads and writes records as files. `today` keeps future visits out.
class Sheets {
 public:
  Sheets() = default;
  Sheets(const Sheets&) = delete;
  Sheets& operator=(const Sheets&) = delete;
  virtual ~Sheets() = default;

  virtual SheetsReading read(const std::vector<ReceivedFile>& files, units::Day today) const = 0;
  /// The whole club as files. Where a received file still says the same as the
  /// records, its very bytes are written; where it does not, its layout (column
  /// order, units, decimal mark, line ends) is kept and only rows that changed differ.
  virtual std::vector<ReceivedFile> write(const green::Records& records,
                                          const std::vector<ReceivedFile>& received) const = 0;
};

} // namespace baize::services
