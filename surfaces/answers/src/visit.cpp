#include "baize/answers/visit.h"

#include "baize/answers/words.h"

namespace baize::answers {

namespace {

Json mark(const green::Mark& mark) {
  return Object().put("kind", word(mark.kind)).put("seconds", mark.seconds).done();
}

Json marks(const std::vector<green::Mark>& marks) {
  return list(marks, mark);
}

Json roll(const green::Roll& roll) {
  return Object()
      .put("order", roll.order)
      .put("distance_m", roll.distance)
      .put("marks", roll.marks, marks)
      .put("score", roll.score)
      .done();
}

Json run(const green::Run& run) {
  return Object()
      .put("spot", run.spot)
      .put("direction", word(run.direction))
      .nest("rolls", list(run.rolls, roll))
      .put("total", run.total)
      .put("total_of", run.total_of)
      .done();
}

Json conditions(const green::Conditions& conditions) {
  return Object()
      .put("hours_since_mowing", conditions.hours_since_mowing)
      .put("hours_since_rolling", conditions.hours_since_rolling)
      .put("dew", conditions.dew)
      .put("wind", conditions.wind)
      .put("surface", conditions.surface)
      .done();
}

} // namespace

Json to_json(const green::Source& source) {
  return Object().put("file", source.file).put("line", source.line).done();
}

Json to_json(const green::Visit& visit) {
  return Object()
      .put("id", visit.id)
      .put("green", visit.green)
      .put("half", visit.half)
      .put("observer", visit.observer)
      .put("day", visit.day)
      .put("from", visit.from)
      .put("to", visit.to)
      .put("shared_rolls",
           visit.shared_rolls.empty() ? std::nullopt : std::optional(visit.shared_rolls))
      .nest("conditions", conditions(visit.conditions))
      .nest("runs", list(visit.runs, run))
      .put("note", visit.note)
      .nest("source", to_json(visit.source))
      .done();
}

} // namespace baize::answers
