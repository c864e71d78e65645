#include "baize/answers/observers_review.h"

#include "baize/answers/estimate.h"

namespace baize::answers {

namespace {

Json quarter(const observers::QuarterLean& quarter) {
  return Object()
      .put("year", quarter.year)
      .put("quarter", quarter.quarter)
      .put("sessions", quarter.sessions)
      .put("balls", quarter.balls)
      .nest("bias", estimate(quarter.bias))
      .done();
}

Json trend(const observers::Trend& trend) {
  return Object()
      .put("per_year", trend.per_year)
      .put("se", trend.se)
      .put("low", trend.interval.low)
      .put("high", trend.interval.high)
      .put("p", trend.p)
      .done();
}

Json observer(const services::ObserverLine& line) {
  Object object;
  object.put("observer", line.observer)
      .put("name", line.name)
      .put("visits", line.visits)
      .put("sessions", line.lean.sessions)
      .put("balls", line.lean.balls)
      .nest("beside", list(line.beside))
      .put("sentence", line.sentence);
  if (line.lean.summary.usable) {
    object.nest("bias", estimate(line.lean.bias));
  }
  return object.nest("quarters", list(line.lean.quarters, quarter))
      .put("trend", line.lean.trend, trend)
      .put("correction", line.correction, estimate)
      .done();
}

Json point(const services::AgreementPoint& point) {
  return Object()
      .put("mean", point.mean)
      .put("difference", point.difference)
      .put("items", point.items)
      .done();
}

Json needed(const observers::Needed& needed) {
  return Object()
      .put("balls_for_bias", needed.balls_for_bias)
      .put("sessions_for_bias", needed.sessions_for_bias)
      .put("balls_for_limits", needed.balls_for_limits)
      .put("sessions_for_limits", needed.sessions_for_limits)
      .put("design_effect", needed.design_effect)
      .done();
}

Json pair(const services::PairLine& line) {
  const observers::PairAgreement& of = line.agreement;
  Object object;
  object.put("first", of.first)
      .put("second", of.second)
      .put("sentence", line.sentence)
      .put("of_runs", of.of_runs)
      .put("items", of.items)
      .put("balls", of.balls)
      .put("sessions", of.sessions);
  if (of.items > 0) {
    object.nest("bias", estimate(of.bias))
        .put("equal_share", of.equal_share)
        .put("within_one", of.within_one);
  }
  if (of.summary.usable) {
    object.put("sd_within", of.sd_within)
        .put("sd_between", of.sd_between)
        .put("sd", of.sd)
        .nest("lower_limit", estimate(of.lower_limit))
        .nest("upper_limit", estimate(of.upper_limit));
  }
  return object.put("kappa_quadratic", of.kappa_quadratic, estimate)
      .put("kappa_linear", of.kappa_linear, estimate)
      .put("icc", of.icc, estimate)
      .put("concordance", of.concordance, estimate)
      .put("needed", line.needed, needed)
      .nest("points", list(line.points, point))
      .done();
}

Json nearby(const services::NearbyLine& line) {
  return Object()
      .put("first", line.pair.first)
      .put("second", line.pair.second)
      .put("sentence", line.sentence)
      .put("pairs", line.pair.pairs)
      .put("greens", line.pair.greens)
      .put("sd", line.pair.sd)
      .nest("bias", estimate(line.pair.bias))
      .done();
}

} // namespace

Json to_json(const services::ObserversReview& review) {
  return Object()
      .put("club", review.club)
      .put("sentence", review.sentence)
      .put("sessions", review.sessions)
      .put("balls", review.balls)
      .put("waiting", review.waiting)
      .put("half_width", review.half_width)
      .put("nearby_days", review.nearby_days)
      .nest("observers", list(review.observers, observer))
      .nest("pairs", list(review.pairs, pair))
      .nest("nearby", list(review.nearby, nearby))
      .put("alpha_ordinal", review.alpha_ordinal.estimate, estimate)
      .put("alpha_interval", review.alpha_interval.estimate, estimate)
      .done();
}

} // namespace baize::answers
