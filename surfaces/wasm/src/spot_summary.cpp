#include "answers.h"
#include "baize/green/roll_score.h"
#include "baize/speed/green_speed.h"
#include "change.h"
#include "rolls.h"

namespace baize::wasm {

namespace {

green::Run read_run(Reader& reader, const char* field, green::Direction direction) {
  green::Run run;
  run.direction = direction;
  run.rolls = read_rolls(reader, field);
  return run;
}

void read_total(Reader& totals, const char* field, green::Run& run) {
  if (const Read* found = totals.object(field)) {
    Reader one(*found, std::string("totals ") + field);
    run.total = one.whole("total");
    run.total_of = one.whole("total_of");
    totals.join(one);
  }
}

std::vector<green::Run> read_runs(Reader& reader) {
  std::vector<green::Run> runs{read_run(reader, "out", green::Direction::out),
                               read_run(reader, "back", green::Direction::back)};
  if (const Read* found = reader.object("totals")) {
    Reader totals(*found, "totals");
    read_total(totals, "out", runs[0]);
    read_total(totals, "back", runs[1]);
    reader.join(totals);
  }
  for (const green::Run& run : runs) {
    if (auto problem = run_problem(run)) {
      reader.refuse(std::move(*problem));
    }
  }
  return runs;
}

std::optional<Reading> reading(const std::vector<green::Run>& runs) {
  const auto spot = speed::spot_speed(runs);
  return spot ? std::optional(Reading{spot->speed_m, spot->standard_error_m}) : std::nullopt;
}

/// By its rolls where they are there, else by its speed.
std::optional<Reading> read_last(Reader& reader) {
  const Read* found = reader.object("last");
  if (found == nullptr) {
    return std::nullopt;
  }
  Reader last(*found, "last reading");
  const auto rolled = reading(read_runs(last));
  const auto metres = last.number("metres");
  const auto error = last.number("error");
  if (metres && !(*metres > 0 && *metres <= 30)) {
    last.refuse({"distance_out_of_range", "metres", shown(Read(*metres)),
                 "a number above 0 and up to 30 m", "last reading"});
  }
  if (error && !(*error >= 0 && *error <= 30)) {
    last.refuse({"standard_error_out_of_range", "error", shown(Read(*error)),
                 "a number from 0 to 30 m", "last reading"});
  }
  reader.join(last);
  return rolled || !metres ? rolled : std::optional(Reading{*metres, error});
}

Json sum_json(const std::optional<green::ScoreSum>& sum) {
  if (!sum) {
    return {};
  }
  Json json = Json::object();
  json["total"] = sum->total;
  json["scored"] = sum->rolls;
  json["mean"] = sum->mean();
  return json;
}

Json score_json(const std::vector<green::Run>& runs) {
  Json json = sum_json(green::score_sum(runs));
  if (!json.is_null()) {
    json["out"] = sum_json(green::score_sum(runs[0]));
    json["back"] = sum_json(green::score_sum(runs[1]));
  }
  return json;
}

Json mean_json(const std::optional<speed::RunSpeed>& run) {
  return run ? Json(run->mean_m) : Json();
}

Json class_json(std::optional<speed::SlopeClass> slope) {
  if (!slope) {
    return {};
  }
  return *slope == speed::SlopeClass::gentle     ? "gentle"
         : *slope == speed::SlopeClass::moderate ? "moderate"
                                                 : "steep";
}

Json speed_json(const std::vector<green::Run>& runs) {
  const auto spot = speed::spot_speed(runs);
  if (!spot) {
    return {};
  }
  Json json = Json::object();
  json["metres"] = spot->speed_m;
  json["error"] = spot->standard_error_m;
  json["method"] = spot->one_direction_only ? "one_direction"
                   : spot->directions_apart ? "slope_formula"
                                            : "plain_mean";
  json["plain_mean"] = spot->plain_mean_m;
  json["slope_corrected"] = or_null(spot->slope_corrected_m);
  json["out"] = mean_json(spot->out);
  json["back"] = mean_json(spot->back);
  json["ratio"] = or_null(spot->ratio);
  json["slope_class"] = class_json(spot->slope_class);
  json["sentences"] = text_list(spot->warnings);
  return json;
}

} // namespace

Answer spot_summary(const Read& takes) {
  Reader reader(takes);
  const std::vector<green::Run> runs = read_runs(reader);
  const auto last = read_last(reader);
  const LengthStyle style = read_length_style(reader);
  if (reader.problem()) {
    return reader.refusal();
  }
  Json gives = Json::object();
  gives["score"] = score_json(runs);
  gives["speed"] = speed_json(runs);
  gives["change"] = change_json(last, reading(runs), style);
  return gives;
}

} // namespace baize::wasm
