#include "ranges.h"

#include "baize/units/number.h"

#include <cmath>

namespace baize::climate {

std::optional<units::Problem> outside(const Ranged& ranged, const char* code) {
  if (!ranged.value || (*ranged.value >= ranged.lowest && *ranged.value <= ranged.highest)) {
    return std::nullopt;
  }
  const std::string value =
      std::isfinite(*ranged.value) ? units::write_number(*ranged.value) : "not finite";
  return units::Problem{code, ranged.field, value,
                        units::write_number(ranged.lowest) + " to " +
                            units::write_number(ranged.highest) + " " + ranged.unit,
                        ""};
}

} // namespace baize::climate
