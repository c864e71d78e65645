#pragma once

#include <nlohmann/json.hpp>

#include <set>
#include <string>

/// surfaces/api/openapi.yaml, read for the tests.
namespace contract {

/// The whole file as JSON.
const nlohmann::json& openapi();
/// "GET /api/v1/clubs" ...
std::set<std::string> operations();
/// What is wrong with `document` under components/schemas/NAME; empty: nothing.
std::string faults(const std::string& schema, const nlohmann::json& document);
std::string faults(const std::string& schema, const std::string& text);

} // namespace contract
