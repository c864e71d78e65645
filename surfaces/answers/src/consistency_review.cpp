#include "baize/answers/consistency_review.h"

#include "baize/answers/estimate.h"

namespace baize::answers {

namespace {

Json level(const consistency::NestedLevel& level) {
  return Object()
      .put("name", level.name)
      .put("groups", level.groups)
      .put("variance", level.variance)
      .put("share", level.share)
      .done();
}

Json parts(const consistency::Nested& nested) {
  return Object()
      .put("values", nested.values)
      .put("mean", nested.mean)
      .nest("levels", nested.summary.usable ? list(nested.levels, level) : Json::array())
      .done();
}

Json standing(const consistency::GreenStanding& standing) {
  return Object()
      .put("days", standing.days)
      .put("mean", standing.mean)
      .put("level", standing.level)
      .nest("difference", estimate(standing.difference))
      .put("robust_z", standing.robust_z)
      .put("out_of_line", standing.out_of_line)
      .done();
}

Json green(const services::GreenConsistency& green) {
  return Object()
      .put("green", green.green)
      .put("name", green.name)
      .put("score", green.score, standing)
      .put("speed", green.speed, standing)
      .put("standard", green.standard)
      .put("fast_but_not_true", green.fast_but_not_true)
      .done();
}

Json spot(const services::SpotConsistency& spot) {
  const consistency::SpotDirections& of = spot.directions;
  Object object;
  object.put("green", spot.green)
      .put("name", spot.name)
      .put("spot", of.spot)
      .put("finding", word(spot.finding))
      .put("visits", of.visits)
      .put("speeds", of.speeds);
  if (of.visits > 0) {
    object.nest("score", estimate(of.score));
  }
  if (of.speeds > 0) {
    object.nest("rise", estimate(of.rise));
  }
  return object.put("p", of.p)
      .put("p_all", of.p_all)
      .put("rise_sd", of.rise_sd)
      .put("p_changing", of.p_changing)
      .done();
}

Json point(const services::SpeedScore& point) {
  return Object()
      .put("green", point.green)
      .put("speed_m", point.speed_m)
      .put("score", point.score)
      .done();
}

Json rank(const consistency::RankCorrelation& rank) {
  return Object()
      .put("pairs", rank.pairs)
      .put("groups", rank.groups)
      .nest("estimate", estimate(rank.value))
      .done();
}

} // namespace

std::string_view word(consistency::DirectionFinding value) {
  using Finding = consistency::DirectionFinding;
  switch (value) {
  case Finding::too_few:
    return "too_few";
  case Finding::alike:
    return "alike";
  case Finding::slope:
    return "slope";
  case Finding::score_apart:
    return "score_apart";
  case Finding::changing:
    return "changing";
  }
  return "";
}

Json to_json(const services::ConsistencyReview& review) {
  return Object()
      .put("club", review.club)
      .nest("days", to_json(review.days))
      .put("sentence", review.sentence)
      .put("visits", review.visits)
      .nest("score_parts", parts(review.score_parts))
      .nest("speed_parts", parts(review.speed_parts))
      .nest("greens", list(review.greens, green))
      .nest("spots", list(review.spots, spot))
      .put("speed_and_score", review.speed_and_score, rank)
      .nest("points", list(review.points, point))
      .put("score_pairs", review.hours.score_pairs)
      .put("afternoon_score", review.hours.score, estimate)
      .put("speed_pairs", review.hours.speed_pairs)
      .put("afternoon_speed_m", review.hours.speed, estimate)
      .done();
}

} // namespace baize::answers
