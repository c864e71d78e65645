#include "json.h"

namespace baize::wasm {

Json text_list(const std::vector<std::string_view>& texts) {
  Json all = Json::array();
  for (const std::string_view text : texts) {
    all.push_back(std::string(text));
  }
  return all;
}

Json text_list(const std::vector<std::string>& texts) {
  return Json(texts);
}

Json problem_json(const units::Problem& problem) {
  Json json = Json::object();
  json["code"] = problem.code;
  json["field"] = problem.field;
  json["value"] = problem.value;
  json["rule"] = problem.rule;
  json["sentence"] = units::sentence(problem);
  return json;
}

} // namespace baize::wasm
