#pragma once

#include "baize/services/trial_files_port.h"

namespace baize::sheets {

/// trial.csv (the plan) and trial_records.csv, as docs/howto/trials.md describes them.
class TrialCsv final : public services::TrialFiles {
 public:
  services::TrialReading read(const services::ReceivedFile& plan,
                              const services::ReceivedFile& records) const override;
  services::TrialReading read_plan(const services::ReceivedFile& plan) const override;
  std::string write_plan(const trials::Plan& plan) const override;
  std::string write_sheet(const trials::Plan& plan,
                          const std::vector<units::Day>& days) const override;
};

} // namespace baize::sheets
