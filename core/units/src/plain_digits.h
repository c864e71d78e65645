#pragma once

#include <string>

namespace baize::units {

/// As std::to_chars writes a double in fixed notation: the fewest digits that
/// read back the same, found by trial of 15, 16 and 17. For libraries whose
/// to_chars is not there or too heavy: the tables of libc++'s weigh 100 kB, more
/// than all else that a phone loads. Wants a locale whose decimal mark is '.'.
/// Below 1e-300 it may write more digits than the fewest.
std::string plain_digits(double value);

} // namespace baize::units
