#pragma once

#include <nlohmann/json.hpp>

#include <string>

namespace phone {

/// surfaces/wasm/functions.json with every $ref put in place.
const nlohmann::json& functions();

/// Why the value is not of the schema; empty where it is.
std::string faults(const nlohmann::json& value, const nlohmann::json& schema);

} // namespace phone
