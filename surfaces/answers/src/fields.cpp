#include "baize/answers/fields.h"

#include "baize/answers/words.h"
#include "baize/green/kinds.h"

#include <span>

namespace baize::answers {

namespace {

template <class T> Json each(std::span<const T> items, Json (*write)(const T&)) {
  Json all = Json::array();
  for (const T& item : items) {
    all.push_back(write(item));
  }
  return all;
}

Json rule(const green::ValueRule& rule) {
  Object object;
  object.put("type", word(rule.type)).put("unit", rule.unit);
  if (rule.type != green::ValueType::word) {
    object.put("lowest", rule.lowest)
        .put("highest", rule.highest)
        .put("above_lowest", rule.above_lowest);
  }
  const std::vector<std::string_view> words(rule.words.begin(), rule.words.end());
  return object.nest("words", list(words)).put("clause", rule.clause()).done();
}

Json parameter_kind(const green::ParameterKind& kind) {
  return Object()
      .put("name", kind.name)
      .put("title", kind.title)
      .nest("rule", rule(kind.rule))
      .put("leading", kind.leading)
      .put("meaning", kind.meaning)
      .done();
}

Json work_kind(const green::WorkKind& kind) {
  return Object()
      .put("name", kind.name)
      .put("title", kind.title)
      .put("work_class", word(kind.work_class))
      .nest("parameters", each(kind.parameters, parameter_kind))
      .put("meaning", kind.meaning)
      .done();
}

Json measured_field(const green::MeasuredField& field) {
  return Object()
      .put("record", field.record)
      .put("name", field.name)
      .put("title", field.title)
      .nest("rule", rule(field.rule))
      .put("kind", field.kind)
      .put("source", field.source)
      .put("trust", field.trust)
      .done();
}

Json score_rule(const green::ScoreRule& rule) {
  return Object()
      .put("bobbles_from", rule.bobbles_from)
      .put("bobbles_to", rule.bobbles_to)
      .put("others_from", rule.others_from)
      .put("others_to", rule.others_to)
      .put("offered", rule.offered)
      .put("lowest", rule.lowest)
      .put("highest", rule.highest)
      .done();
}

} // namespace

Json fields() {
  return Object()
      .nest("work_kinds", each(green::work_kinds(), work_kind))
      .nest("measured_fields", each(green::measured_fields(), measured_field))
      .nest("score_rules", each(green::score_rules(), score_rule))
      .done();
}

} // namespace baize::answers
