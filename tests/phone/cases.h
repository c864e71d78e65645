#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace phone {

/// One call: a function's name and the text given to it.
struct Case {
  std::string name;
  std::string takes;
};

/// Every visit of tests/scenarios: its runs, and its spots against the visit before.
std::vector<Case> scenario_cases();
/// tests/reference/data: roll_score and green_speed.
std::vector<Case> reference_cases();
/// So many calls, the same for the same seed: mostly what a phone sends, some
/// values outside their range, one in twenty with its bytes broken.
std::vector<Case> random_cases(int count, std::uint64_t seed);

/// All of them, as the module and the native library are compared on.
std::vector<Case> all_cases();

} // namespace phone
