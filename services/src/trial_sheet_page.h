#pragma once

#include "baize/trials/plan.h"
#include "baize/units/day.h"

#include <string>
#include <vector>

namespace baize::services {

/// A record sheet to print, one page a visit, plots in the order of its walk. No
/// treatments on it. Self-contained HTML; texts escaped.
std::string trial_sheet_page(const trials::Plan& plan, const std::vector<units::Day>& days);

} // namespace baize::services
