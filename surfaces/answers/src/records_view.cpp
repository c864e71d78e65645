#include "baize/answers/records_view.h"

#include "baize/answers/problem.h"
#include "baize/answers/speed.h"
#include "baize/answers/visit.h"

namespace baize::answers {

namespace {

Json visit_line(const services::VisitLine& line) {
  return Object()
      .put("visit", line.visit)
      .put("green", line.green)
      .put("green_name", line.green_name)
      .put("half", line.half)
      .put("observer", line.observer)
      .put("day", line.day)
      .put("at", line.at)
      .put("rolls", line.rolls)
      .put("score", line.score)
      .put("speed", line.speed, to_json)
      .put("remarks", line.remarks)
      .nest("source", to_json(line.source))
      .done();
}

Json spot(const services::SpotDetail& spot) {
  return Object().put("spot", spot.spot).put("speed", spot.speed, to_json).done();
}

} // namespace

Json to_json(const services::VisitPage& page) {
  return Object()
      .put("total", page.total)
      .put("offset", page.offset)
      .nest("visits", list(page.visits, visit_line))
      .done();
}

Json to_json(const services::VisitDetail& detail) {
  return Object()
      .nest("visit", to_json(detail.visit))
      .put("green_name", detail.green_name)
      .put("score", detail.score)
      .put("scored_rolls", detail.scored_rolls)
      .put("speed", detail.speed, to_json)
      .nest("spots", list(detail.spots, spot))
      .nest("remarks", list(detail.remarks, with_sentence))
      .done();
}

} // namespace baize::answers
