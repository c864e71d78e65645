#include "api_contract.h"

#include <cctype>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>
#include <yaml-cpp/yaml.h>

namespace contract {

namespace {

using nlohmann::json;

json scalar(const YAML::Node& node) {
  const std::string& text = node.Scalar();
  if (node.Tag() == "!") { // written in quotes
    return text;
  }
  const json value = json::parse(text, nullptr, false);
  return value.is_number() || value.is_boolean() ? value : json(text);
}

json converted(const YAML::Node& node) {
  if (node.IsMap()) {
    json object = json::object();
    for (const auto& entry : node) {
      object[entry.first.Scalar()] = converted(entry.second);
    }
    return object;
  }
  if (node.IsSequence()) {
    json array = json::array();
    for (const auto& item : node) {
      array.push_back(converted(item));
    }
    return array;
  }
  return scalar(node);
}

/// Puts what a $ref names in its place; the schemas have no circles.
json resolved(const json& schema) {
  if (schema.is_array()) {
    json all = json::array();
    for (const json& one : schema) {
      all.push_back(resolved(one));
    }
    return all;
  }
  if (!schema.is_object()) {
    return schema;
  }
  if (schema.contains("$ref")) {
    const std::string name = schema["$ref"];
    return resolved(openapi().at(json::json_pointer(name.substr(1))));
  }
  json object = json::object();
  for (const auto& [key, value] : schema.items()) {
    if (key != "example" && key != "description") {
      object[key] = resolved(value);
    }
  }
  return object;
}

} // namespace

const json& openapi() {
  static const json file = converted(YAML::LoadFile(BAIZE_SOURCE_DIR "/surfaces/api/openapi.yaml"));
  return file;
}

std::set<std::string> operations() {
  std::set<std::string> all;
  for (const auto& [path, methods] : openapi()["paths"].items()) {
    for (const auto& [method, operation] : methods.items()) {
      std::string upper;
      for (const char c : method) {
        upper += static_cast<char>(std::toupper(c));
      }
      all.insert(upper + " " + path);
    }
  }
  return all;
}

std::string faults(const std::string& name, const json& document) {
  const json text = resolved(openapi()["components"]["schemas"].at(name));
  valijson::Schema schema;
  valijson::SchemaParser parser(valijson::SchemaParser::kDraft4);
  parser.populateSchema(valijson::adapters::NlohmannJsonAdapter(text), schema);
  valijson::Validator validator;
  valijson::ValidationResults results;
  if (validator.validate(schema, valijson::adapters::NlohmannJsonAdapter(document), &results)) {
    return "";
  }
  std::string all;
  valijson::ValidationResults::Error error;
  while (results.popError(error)) {
    for (const std::string& step : error.context) {
      all += step;
    }
    all += ": " + error.description + "\n";
  }
  return all;
}

std::string faults(const std::string& name, const std::string& text) {
  const json document = json::parse(text, nullptr, false);
  return document.is_discarded() ? "no JSON: " + text.substr(0, 200) : faults(name, document);
}

} // namespace contract
