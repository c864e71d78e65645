#pragma once

#include "baize/units/problem.h"

#include <string>

namespace baize::apps {

/// A report's data put into its page, one file. Refuses "pages_not_built".
units::Result<std::string> report_page(const std::string& json);

} // namespace baize::apps
