#include "baize/answers/season_review.h"

#include "baize/answers/fixture.h"
#include "baize/answers/ledger.h"
#include "baize/answers/speed.h"
#include "baize/answers/words.h"
#include "baize/answers/work_loss.h"

namespace baize::answers {

namespace {

Json visit_point(const services::VisitPoint& point) {
  return Object()
      .put("visit", point.visit)
      .put("day", point.day)
      .put("at", point.at)
      .put("observer", point.observer)
      .put("half", point.half)
      .put("score", point.score)
      .put("lowest", point.lowest)
      .put("highest", point.highest)
      .put("scored_rolls", point.scored_rolls)
      .put("speed", point.speed, to_json)
      .put("remarks", point.remarks)
      .done();
}

Json work_tick(const services::WorkTick& tick) {
  return Object()
      .put("work", tick.work)
      .put("kind", tick.kind)
      .put("label", tick.label)
      .put("day", tick.day)
      .put("until", tick.until)
      .put("half", tick.half)
      .put("work_class", word(tick.work_class))
      .done();
}

Json weather_point(const services::WeatherPoint& point) {
  return Object()
      .put("day", point.day)
      .put("growth", point.growth)
      .put("rain_mm", point.rain_mm)
      .put("tmin_c", point.tmin_c)
      .put("tmax_c", point.tmax_c)
      .done();
}

Json standard_point(const services::StandardPoint& point) {
  return Object().put("from", point.from).put("score", point.score).done();
}

Json growth_options(const climate::GrowthOptions& options) {
  return Object()
      .put("optimum_c", options.optimum_c)
      .put("spread_c", options.spread_c)
      .put("plateau", options.plateau)
      .done();
}

} // namespace

Json to_json(const services::SeasonReview& review) {
  return Object()
      .put("club", review.club)
      .put("green", review.green)
      .put("green_name", review.green_name)
      .put("year", review.year)
      .nest("period", to_json(review.period))
      .nest("growth_options", growth_options(review.growth_options))
      .nest("visits", list(review.visits, visit_point))
      .nest("works", list(review.works, work_tick))
      .nest("weather", list(review.weather, weather_point))
      .nest("standards", list(review.standards, standard_point))
      .nest("fixtures", list(review.fixtures, to_json))
      .nest("ledger", to_json(review.ledger))
      .nest("losses", list(review.losses, to_json))
      .put("weather_days_missing", review.weather_days_missing)
      .done();
}

} // namespace baize::answers
