#include "baize/answers/work.h"

#include "baize/answers/visit.h"

namespace baize::answers {

namespace {

Json parameter(const green::Parameter& parameter) {
  return Object()
      .put("name", parameter.name)
      .put("number", parameter.number)
      .put("word", parameter.word)
      .done();
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
      .nest("parameters", list(work.parameters, parameter))
      .put("note", work.note)
      .nest("source", to_json(work.source))
      .done();
}

} // namespace baize::answers
