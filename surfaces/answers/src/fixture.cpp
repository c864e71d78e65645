#include "baize/answers/fixture.h"

#include "baize/answers/visit.h"

namespace baize::answers {

Json to_json(const green::Fixture& fixture) {
  return Object()
      .put("id", fixture.id)
      .put("name", fixture.name)
      .nest("days", to_json(fixture.days))
      .put("importance", fixture.importance)
      .put("score_wanted", fixture.score_wanted)
      .put("speed_wanted_m", fixture.speed_wanted)
      .nest("source", to_json(fixture.source))
      .done();
}

} // namespace baize::answers
