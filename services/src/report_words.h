#pragma once

#include "baize/services/report_data.h"

namespace baize::services {

/// A few plain sentences for the committee, most important first.
std::vector<std::string> committee_sentences(const ReportData& report);
/// How the report's figures were computed, a sentence each.
std::vector<std::string> method_sentences(const ReportData& report);

} // namespace baize::services
