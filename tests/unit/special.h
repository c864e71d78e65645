#pragma once

#include <limits>

/// Numbers that no measurement is.
namespace special {

inline constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
inline constexpr double kInfinity = std::numeric_limits<double>::infinity();

} // namespace special
