#include "phone/described.h"

#include <fstream>
#include <map>
#include <memory>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

namespace phone {

namespace {

using nlohmann::json;

/// Puts what a $ref names in its place; the schemas have no circles.
json resolved(const json& part, const json& file) {
  if (part.is_array()) {
    json all = json::array();
    for (const json& one : part) {
      all.push_back(resolved(one, file));
    }
    return all;
  }
  if (!part.is_object()) {
    return part;
  }
  if (part.contains("$ref")) {
    const std::string name = part["$ref"];
    return resolved(file.at(json::json_pointer(name.substr(1))), file);
  }
  json object = json::object();
  for (const auto& [key, value] : part.items()) {
    object[key] = resolved(value, file);
  }
  return object;
}

} // namespace

const json& functions() {
  static const json described = [] {
    std::ifstream in(BAIZE_SOURCE_DIR "/surfaces/wasm/functions.json");
    const json file = json::parse(in);
    return resolved(file["functions"], file);
  }();
  return described;
}

std::string faults(const json& value, const json& schema) {
  // Read once: there are few schemas and many values.
  static std::map<std::string, std::unique_ptr<valijson::Schema>> known;
  auto& read = known[schema.dump()];
  if (!read) {
    read = std::make_unique<valijson::Schema>();
    valijson::SchemaParser parser;
    const valijson::adapters::NlohmannJsonAdapter text(schema);
    parser.populateSchema(text, *read);
  }
  valijson::Validator validator;
  valijson::ValidationResults results;
  const valijson::adapters::NlohmannJsonAdapter target(value);
  if (validator.validate(*read, target, &results)) {
    return {};
  }
  std::string text;
  valijson::ValidationResults::Error error;
  while (results.popError(error)) {
    for (const std::string& step : error.context) {
      text += step;
    }
    text += ": " + error.description + "\n";
  }
  return text;
}

} // namespace phone
