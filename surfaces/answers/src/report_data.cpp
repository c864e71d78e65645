#include "baize/answers/report_data.h"

#include "baize/answers/greens_review.h"
#include "baize/answers/season_review.h"
#include "baize/answers/work_review.h"

namespace baize::answers {

namespace {

Json totals(const services::LedgerTotals& totals) {
  return Object()
      .put("greens", totals.greens)
      .put("measured_true", totals.measured_true)
      .put("measured_not", totals.measured_not)
      .put("between_true", totals.between_true)
      .put("unmeasured", totals.unmeasured)
      .put("closed", totals.closed)
      .put("open", totals.open())
      .put("fewest_true", totals.fewest_true())
      .put("most_true", totals.most_true())
      .done();
}

Json basis(const services::ReportBasis& basis) {
  return Object()
      .put("visits", basis.visits)
      .put("observers", basis.observers)
      .put("scored_rolls", basis.scored_rolls)
      .put("measured_rolls", basis.measured_rolls)
      .put("weather_days", basis.weather_days)
      .put("weather_days_missing", basis.weather_days_missing)
      .done();
}

} // namespace

Json to_json(const services::ReportData& data) {
  return Object()
      .put("club", data.club)
      .put("club_name", data.club_name)
      .put("year", data.year)
      .nest("period", to_json(data.period))
      .put("year_ended", data.year_ended)
      .put("today", data.today)
      .nest("greens", to_json(data.greens))
      .nest("seasons", list(data.seasons, to_json))
      .nest("works", list(data.works, to_json))
      .nest("totals", totals(data.totals))
      .nest("basis", basis(data.basis))
      .nest("sentences", list(data.sentences))
      .nest("methods", list(data.methods))
      .done();
}

} // namespace baize::answers
