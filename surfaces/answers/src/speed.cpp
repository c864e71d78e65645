#include "baize/answers/speed.h"

#include "baize/answers/words.h"

namespace baize::answers {

namespace {

Json run_speed(const speed::RunSpeed& run) {
  return Object()
      .put("mean_m", run.mean_m)
      .put("spread_m", run.spread_m)
      .put("rolls", run.rolls)
      .put("within_tolerance", run.within_tolerance)
      .done();
}

Json slope_class(const speed::SlopeClass& value) {
  return Json(word(value));
}

} // namespace

Json to_json(const speed::VisitSpeed& speed) {
  return Object()
      .put("speed_m", speed.speed_m)
      .put("standard_error_m", speed.standard_error_m)
      .put("spots", speed.spots)
      .put("steep", speed.steep)
      .nest("warnings", list(speed.warnings))
      .done();
}

Json to_json(const speed::SpotSpeed& speed) {
  return Object()
      .put("out", speed.out, run_speed)
      .put("back", speed.back, run_speed)
      .put("plain_mean_m", speed.plain_mean_m)
      .put("slope_corrected_m", speed.slope_corrected_m)
      .put("speed_m", speed.speed_m)
      .put("standard_error_m", speed.standard_error_m)
      .put("ratio", speed.ratio)
      .put("slope_class", speed.slope_class, slope_class)
      .put("one_direction_only", speed.one_direction_only)
      .put("directions_apart", speed.directions_apart)
      .nest("warnings", list(speed.warnings))
      .done();
}

} // namespace baize::answers
