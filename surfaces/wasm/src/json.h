#pragma once

#include "baize/units/problem.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace baize::wasm {

/// What is read: members are found by search, however many there are.
using Read = nlohmann::json;
/// What is given: members in the order they were put in.
using Json = nlohmann::ordered_json;

/// What a function of the module is: what it takes, read; what it gives, or why not.
using Answer = units::Result<Json>;

/// Null for what is not known, and for a number that is not finite.
inline Json or_null(std::optional<double> value) {
  return value && std::isfinite(*value) ? Json(*value) : Json();
}

Json text_list(const std::vector<std::string_view>& texts);
Json text_list(const std::vector<std::string>& texts);

/// {code, field, value, rule, sentence}.
Json problem_json(const units::Problem& problem);

} // namespace baize::wasm
