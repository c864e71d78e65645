#include "answers.h"
#include "baize/green/roll_score.h"
#include "baize/speed/green_speed.h"
#include "rolls.h"

namespace baize::wasm {

Answer run_summary(const Read& takes) {
  Reader reader(takes);
  green::Run run;
  run.rolls = read_rolls(reader, "rolls");
  run.total = reader.whole("total");
  run.total_of = reader.whole("total_of");
  if (reader.problem()) {
    return reader.refusal();
  }
  if (const auto problem = run_problem(run)) {
    return units::Refusal(*problem);
  }
  const auto sum = green::score_sum(run);
  const auto speed = speed::spot_speed({run});
  Json gives = Json::object();
  gives["total"] = sum ? Json(sum->total) : Json();
  gives["scored"] = sum ? sum->rolls : 0;
  gives["mean"] = sum ? Json(sum->mean()) : Json();
  gives["spread_m"] = speed ? Json(speed->out->spread_m) : Json();
  gives["distance_mean"] = speed ? Json(speed->out->mean_m) : Json();
  gives["measured"] = speed ? speed->out->rolls : 0;
  gives["remarks"] = text_list(run_remarks(run));
  return gives;
}

} // namespace baize::wasm
