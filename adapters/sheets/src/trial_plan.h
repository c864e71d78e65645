#pragma once

#include "baize/services/trial_files_port.h"
#include "findings.h"

namespace baize::sheets {

/// Reads trial.csv; what is wrong goes to the findings.
trials::Plan read_plan(const services::ReceivedFile& file, Findings& findings);

} // namespace baize::sheets
