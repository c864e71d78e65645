#include "places.h"

#include "baize/units/number.h"

#include <algorithm>

namespace baize::observers {

std::optional<std::size_t> place_of(const SharedTable& table, const std::string& observer) {
  const auto found = std::find(table.observers.begin(), table.observers.end(), observer);
  if (found == table.observers.end()) {
    return std::nullopt;
  }
  return static_cast<std::size_t>(found - table.observers.begin());
}

units::Problem unknown_observer(const std::string& observer) {
  return {"unknown_observer", "observer", observer, "an observer with shared rolls", {}};
}

units::Problem no_shared_rolls(std::size_t sessions) {
  return {"no_shared_rolls",
          "shared sessions",
          std::to_string(sessions),
          "at least 2: visits at which others scored the same balls",
          {}};
}

std::optional<units::Problem> outside(const char* field, double value, double low, double high,
                                      const char* rule) {
  if (value > low && value < high) {
    return std::nullopt;
  }
  return units::Problem{"option_out_of_range", field, units::write_number(value), rule, {}};
}

} // namespace baize::observers
