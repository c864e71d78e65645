#include "baize/answers/season_model.h"

#include <cmath>

namespace baize::answers {
namespace {

double cut(double value) {
  return std::round(value * 1e4) / 1e4;
}

Json estimate(const season::Estimate& one) {
  return Object()
      .put("value", cut(one.value))
      .put("standard_error", cut(one.standard_error))
      .put("low", cut(one.low))
      .put("high", cut(one.high))
      .done();
}

Json returning(const season::Return& one) {
  return Object()
      .put("median", one.median)
      .put("low", one.low)
      .put("high", one.high)
      .put("share", cut(one.share))
      .put("followed", one.followed)
      .done();
}

Json day(const season::DayEstimate& one) {
  Json losses = Json::array();
  for (const double loss : one.losses) {
    losses.push_back(cut(loss));
  }
  return Object()
      .put("day", one.day)
      .put("to_come", one.to_come)
      .put("closed", one.closed)
      .put("standard", one.standard)
      .put("score", cut(one.score))
      .put("score_low", cut(one.score_low))
      .put("score_high", cut(one.score_high))
      .put("undisturbed", cut(one.undisturbed))
      .put("undisturbed_low", cut(one.undisturbed_low))
      .put("undisturbed_high", cut(one.undisturbed_high))
      .put("chance", cut(one.chance))
      .nest("losses", std::move(losses))
      .done();
}

Json work(const season::WorkEstimate& one) {
  return Object()
      .nest("works", list(one.loss.works))
      .put("label", one.loss.label)
      .put("day", one.loss.day)
      .put("half", one.loss.half)
      .nest("depth", estimate(one.depth))
      .nest("rate", estimate(one.rate))
      .nest("half_life", estimate(one.half_life))
      .nest("score_days", estimate(one.score_days))
      .nest("growth_days_back", estimate(one.growth_days_back))
      .nest("within_tolerance", returning(one.within_tolerance))
      .nest("at_standard", returning(one.at_standard))
      .done();
}

Json method(const season::MethodEstimate& one) {
  return Object()
      .put("method", one.method)
      .put("losses", one.losses)
      .put("work_days", one.work_days)
      .nest("depth", estimate(one.depth))
      .nest("rate", estimate(one.rate))
      .nest("half_life", estimate(one.half_life))
      .put("rate_determined", one.rate_determined)
      .done();
}

Json observer(const season::ObserverEstimate& one) {
  return Object()
      .put("observer", one.observer)
      .put("visits", one.looks)
      .nest("above", estimate(one.above))
      .done();
}

} // namespace

Json to_json(const services::SeasonModel& model, const season::SeasonFit& fit) {
  const season::GreenYear& year = model.estimates;
  Object object;
  object.put("club", model.club)
      .put("green", model.green)
      .put("green_name", model.green_name)
      .put("year", model.year)
      .put("sentence", model.sentence)
      .put("clock", fit.model.clock == season::Clock::growth_days ? "growth_days" : "calendar_days")
      .put("open_days", year.open_days)
      .nest("true_days", estimate(year.true_days))
      .nest("days", list(year.days, day))
      .nest("works", list(year.works, work));
  if (year.forecast) {
    object.nest("forecast", returning(*year.forecast));
  }
  return object.nest("methods", list(fit.methods, method))
      .nest("observers", list(fit.observers, observer))
      .nest("play", estimate(fit.play))
      .nest("level_walk", estimate(fit.level_walk))
      .nest("visit_sd", estimate(fit.visit_sd))
      .nest("line_sd", estimate(fit.line_sd))
      .put("roll_sd", cut(fit.model.roll_sd))
      .put("tolerance", fit.options.tolerance)
      .put("log_likelihood", cut(fit.log_likelihood))
      .put("draws", static_cast<int>(fit.draws.size()))
      .nest("notes", list(model.notes))
      .done();
}

} // namespace baize::answers
