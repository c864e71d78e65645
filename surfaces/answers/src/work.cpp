#include "baize/answers/work.h"

#include "baize/answers/visit.h"
#include "baize/green/kinds.h"

namespace baize::answers {

namespace {

Json parameter(const green::Parameter& parameter, const green::WorkKind* kind) {
  const green::ParameterKind* known =
      kind == nullptr ? nullptr : green::find_parameter(*kind, parameter.name);
  return Object()
      .put("name", parameter.name)
      .put("title", known == nullptr ? parameter.name : std::string(known->title))
      .put("unit", known == nullptr ? std::string() : std::string(known->rule.unit))
      .put("number", parameter.number)
      .put("word", parameter.word)
      .done();
}

Json parameters(const green::Work& work) {
  const green::WorkKind* kind = green::find_work_kind(work.kind);
  Json all = Json::array();
  for (const green::Parameter& one : work.parameters) {
    all.push_back(parameter(one, kind));
  }
  return all;
}

} // namespace

Json to_json(const green::Work& work) {
  return Object()
      .put("id", work.id)
      .put("kind", work.kind)
      .put("day", work.day)
      .put("until", work.until)
      .put("at", work.at)
      .nest("greens", list(work.greens))
      .put("half", work.half)
      .put("disruptive", work.disruptive)
      .nest("parameters", parameters(work))
      .put("note", work.note)
      .nest("source", to_json(work.source))
      .done();
}

} // namespace baize::answers
