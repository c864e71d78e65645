#include "baize/answers/hand_in.h"
#include "baize/answers/work.h"

namespace baize::answers {

namespace {

Json spot(const green::Spot& spot) {
  return Object()
      .put("id", spot.id)
      .put("bearing_deg", spot.bearing_deg)
      .put("half", spot.half)
      .done();
}

Json last_seen(const services::LastSeen& last) {
  return Object()
      .put("day", last.day)
      .put("score_mean", last.score_mean)
      .put("speed_m", last.speed_m)
      .put("spot", last.spot)
      .done();
}

Json green_of(const services::FieldGreen& one) {
  return Object()
      .put("id", one.green.id)
      .put("name", one.green.name)
      .nest("halves", list(one.green.halves))
      .nest("spots", list(one.green.spots, spot))
      .put("last", one.last, last_seen)
      .done();
}

Json observer(const green::Observer& observer) {
  return Object().put("id", observer.id).put("name", observer.name).done();
}

std::optional<std::string> written(const std::optional<units::MonthDay>& day) {
  return day ? std::optional(units::iso(*day)) : std::nullopt;
}

Json standard(const green::Standard& standard) {
  return Object()
      .put("green", standard.green)
      .put("from", written(standard.from))
      .put("to", written(standard.to))
      .put("score", standard.score)
      .done();
}

} // namespace

Json to_json(const services::FieldKit& kit) {
  return Object()
      .nest("club", Object().put("id", kit.club.id).put("name", kit.club.name).done())
      .nest("greens", list(kit.greens, green_of))
      .nest("observers", list(kit.observers, observer))
      .nest("standards", list(kit.standards, standard))
      .nest("works_today", list(kit.works_today, to_json))
      .done();
}

} // namespace baize::answers
