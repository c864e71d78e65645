#pragma once

#include "baize/observers/shared_table.h"
#include "baize/units/problem.h"

#include <cstddef>
#include <optional>
#include <string>

namespace baize::observers {

/// Where the observer stands in the table.
std::optional<std::size_t> place_of(const SharedTable& table, const std::string& observer);
units::Problem unknown_observer(const std::string& observer);
units::Problem no_shared_rolls(std::size_t sessions);
/// An option that must lie strictly between two numbers.
std::optional<units::Problem> outside(const char* field, double value, double low, double high,
                                      const char* rule);

} // namespace baize::observers
