#pragma once

#include "baize/units/problem.h"

#include <string>

namespace baize::apps {

/// Prints an HTML file to PDF with a headless Chromium, where one is installed.
/// Refuses "pdf_no_browser", "pdf_failed".
units::Result<void> print_pdf(const std::string& html, const std::string& pdf);

} // namespace baize::apps
