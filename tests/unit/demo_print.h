#pragma once

#include "baize/demo/demo_club.h"

#include <cstdint>
#include <string>

namespace baize::testing {

/// The club that the program shows, made once for all tests.
const demo::DemoClub& demo_club();

/// Every field of every record, one record a line.
std::string print(const green::Records& records);

/// FNV-1a, 64 bit: offset basis and prime as its authors (Fowler, Noll, Vo)
/// publish them; from memory.
std::uint64_t fingerprint(const std::string& bytes);

} // namespace baize::testing
