#pragma once

#include "baize/units/problem.h"

#include <string>

namespace baize::scan_code {

/// The text as a code that a phone's camera reads (ISO/IEC 18004, error
/// correction M: 15 % may be lost), an SVG picture of black squares on white
/// with the margin of 4 squares that the standard wants. Refuses
/// "too_long_to_scan".
units::Result<std::string> svg(const std::string& text);

} // namespace baize::scan_code
