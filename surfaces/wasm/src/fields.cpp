#include "answers.h"
#include "baize/green/kinds.h"
#include "reader.h"

namespace baize::wasm {

namespace {

Json rule_json(const green::ValueRule& rule) {
  const bool counted = rule.type != green::ValueType::word;
  Json json = Json::object();
  json["type"] = std::string(word(rule.type));
  json["unit"] = std::string(rule.unit);
  json["lowest"] = counted ? Json(rule.lowest) : Json();
  json["highest"] = counted ? Json(rule.highest) : Json();
  json["above_lowest"] = counted && rule.above_lowest;
  json["words"] = text_list(std::vector<std::string_view>(rule.words.begin(), rule.words.end()));
  json["clause"] = rule.clause();
  return json;
}

Json parameter_json(const green::ParameterKind& kind) {
  Json json = Json::object();
  json["name"] = std::string(kind.name);
  json["title"] = std::string(kind.title);
  json["rule"] = rule_json(kind.rule);
  json["leading"] = kind.leading;
  json["meaning"] = std::string(kind.meaning);
  return json;
}

Json work_json(const green::WorkKind& kind) {
  Json json = Json::object();
  json["name"] = std::string(kind.name);
  json["title"] = std::string(kind.title);
  json["work_class"] = std::string(word(kind.work_class));
  json["parameters"] = Json::array();
  for (const green::ParameterKind& parameter : kind.parameters) {
    json["parameters"].push_back(parameter_json(parameter));
  }
  json["meaning"] = std::string(kind.meaning);
  return json;
}

Json field_json(const green::MeasuredField& field) {
  Json json = Json::object();
  json["record"] = std::string(field.record);
  json["name"] = std::string(field.name);
  json["title"] = std::string(field.title);
  json["rule"] = rule_json(field.rule);
  json["kind"] = std::string(field.kind);
  json["source"] = std::string(field.source);
  json["trust"] = std::string(field.trust);
  return json;
}

} // namespace

Answer fields(const Read& takes) {
  if (const Reader reader(takes); reader.problem()) {
    return reader.refusal();
  }
  Json gives = Json::object();
  gives["measured"] = Json::array();
  for (const green::MeasuredField& field : green::measured_fields()) {
    gives["measured"].push_back(field_json(field));
  }
  gives["works"] = Json::array();
  for (const green::WorkKind& kind : green::work_kinds()) {
    gives["works"].push_back(work_json(kind));
  }
  return gives;
}

} // namespace baize::wasm
