#include "baize/answers/work_loss.h"

#include "baize/answers/words.h"

namespace baize::answers {

namespace {

Json interval(const recovery::RecoveryInterval& interval) {
  return Object()
      .put("definition", word(interval.definition))
      .put("censoring", word(interval.censoring))
      .put("last_below", interval.last_below)
      .put("first_back", interval.first_back)
      .put("after_days", interval.after_days)
      .put("by_days", interval.by_days)
      .put("by_days_if_good", interval.by_days_if_good)
      .put("after_growth_days", interval.after_growth_days)
      .put("by_growth_days", interval.by_growth_days)
      .nest("visits", list(interval.visits))
      .done();
}

Json area(const recovery::LossArea& area) {
  return Object()
      .put("score_days", area.score_days)
      .put("low", area.low)
      .put("high", area.high)
      .put("growth_score_days", area.growth_score_days)
      .put("ended", area.ended)
      .done();
}

} // namespace

Json to_json(const recovery::WorkLoss& loss) {
  const std::vector<recovery::RecoveryInterval> recovery(loss.recovery.begin(),
                                                         loss.recovery.end());
  return Object()
      .put("work", loss.work)
      .put("kind", loss.kind)
      .put("green", loss.green)
      .put("half", loss.half)
      .put("day", loss.day)
      .put("horizon", loss.horizon)
      .put("horizon_reason", word(loss.horizon_reason))
      .put("standard", loss.standard)
      .put("before", loss.before)
      .nest("before_visits", list(loss.before_visits))
      .put("trough", loss.trough)
      .put("trough_day", loss.trough_day)
      .put("depth", loss.depth)
      .nest("recovery", list(recovery, interval))
      .put("area", loss.area, area)
      .put("back_at_lower_standard", loss.back_at_lower_standard)
      .put("visits_after", loss.visits_after)
      .nest("notes", list(loss.notes))
      .done();
}

} // namespace baize::answers
