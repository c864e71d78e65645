#include "baize/answers/problem.h"

namespace baize::answers {

Json to_json(const units::Problem& problem) {
  return Object()
      .put("code", problem.code)
      .put("field", problem.field)
      .put("value", problem.value)
      .put("rule", problem.rule)
      .put("place", problem.place)
      .done();
}

Json with_sentence(const units::Problem& problem) {
  return Object()
      .nest("problem", to_json(problem))
      .put("sentence", units::sentence(problem))
      .done();
}

} // namespace baize::answers
