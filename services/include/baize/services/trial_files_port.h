#pragma once

#include "baize/services/store_port.h"
#include "baize/trials/values.h"

namespace baize::services {

/// A plan and the records that belong to it, read and checked.
struct TrialReading {
  trials::Plan plan;
  std::vector<trials::Record> records;
  int rows_without_value = 0;           ///< of the records file: sheets not filled in yet
  std::vector<units::Problem> problems; ///< place says "trial.csv line 3 column plot"
  bool good() const { return problems.empty(); }
};

/// Reads and writes the files of a trial (docs/howto/trials.md). All problems are
/// collected; with any, neither plan nor records may be used.
class TrialFiles {
 public:
  TrialFiles() = default;
  TrialFiles(const TrialFiles&) = delete;
  TrialFiles& operator=(const TrialFiles&) = delete;
  virtual ~TrialFiles() = default;

  virtual TrialReading read(const ReceivedFile& plan, const ReceivedFile& records) const = 0;
  /// The plan alone.
  virtual TrialReading read_plan(const ReceivedFile& plan) const = 0;
  /// The plan as trial.csv; `read` gives the same plan back.
  virtual std::string write_plan(const trials::Plan& plan) const = 0;
  /// An empty records file: a row for each plot and visit, in the order of each
  /// visit's walk. Treatments are not on it, so that nobody scores what he hopes for.
  virtual std::string write_sheet(const trials::Plan& plan,
                                  const std::vector<units::Day>& days) const = 0;
};

} // namespace baize::services
