// Calls made from the scenarios and the reference data.
#include "phone/cases.h"
#include "phone/from_records.h"
#include "scenarios/scenario.h"

#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <map>

namespace phone {

namespace {

using namespace baize;
using nlohmann::json;

json read(const std::string& file) {
  std::ifstream in(BAIZE_SOURCE_DIR "/tests/reference/data/" + file);
  return json::parse(in);
}

/// {"out": rolls, "back": rolls, "totals"} of one spot.
json spot_json(const green::Visit& visit, const std::string& spot) {
  json spot_runs = {{"out", json::array()}, {"back", json::array()}, {"totals", json::object()}};
  for (const green::Run& run : visit.runs) {
    const std::string direction(word(run.direction));
    if (run.spot == spot) {
      spot_runs[direction] = rolls_json(run);
      if (run.total) {
        spot_runs["totals"][direction] = {{"total", *run.total}, {"total_of", *run.total_of}};
      }
    }
  }
  return spot_runs;
}

void add_visit(std::vector<Case>& cases, const green::Visit& visit,
               std::map<std::string, json>& last) {
  for (const green::Run& run : visit.runs) {
    json takes = {{"rolls", rolls_json(run)}};
    if (run.total) {
      takes["total"] = *run.total;
      takes["total_of"] = *run.total_of;
    }
    cases.push_back({"run_summary", takes.dump()});
    json takes_spot = spot_json(visit, run.spot);
    const std::string place = visit.green + "/" + run.spot;
    const json now = takes_spot;
    takes_spot["last"] = last.contains(place) ? last[place] : json();
    cases.push_back({"spot_summary", takes_spot.dump()});
    last[place] = now;
    for (const green::Roll& roll : run.rolls) {
      cases.push_back({"contradicts", roll_json(roll).dump()});
    }
  }
}

json counted_marks(const json& one) {
  json marks = json::array();
  for (const char* kind : {"bobble", "chatter", "snake"}) {
    for (int i = 0; i < one[kind + std::string("s")]; ++i) {
      marks.push_back({{"kind", kind}});
    }
  }
  return marks;
}

json same_rolls(double metres) {
  const json roll = {{"distance", metres}};
  return json::array({roll, roll, roll});
}

double metres(double value, const std::string& unit) {
  return unit == "cm" ? value / 100 : unit == "ft" ? units::from_feet(value).metres : value;
}

void add_speeds(std::vector<Case>& cases) {
  const json corrected = read("green_speed/slope_correction_cases.json");
  for (const json& one : corrected["cases"]) {
    const json& in = one["inputs"];
    const json takes = {{"out", same_rolls(metres(in["uphill"], in["unit"]))},
                        {"back", same_rolls(metres(in["downhill"], in["unit"]))}};
    cases.push_back({"spot_summary", takes.dump()});
  }
  const json two_ways = read("green_speed/slope_from_two_directions.json");
  for (const json& one : two_ways["cases"]) {
    const json& in = one["inputs"];
    const json takes = {{"out", same_rolls(in["uphill_m"])},
                        {"back", same_rolls(in["downhill_m"])}};
    cases.push_back({"spot_summary", takes.dump()});
  }
  const json physics = read("green_speed/rolling_physics.json");
  for (const json& one : physics["table"]) {
    const double distance = one["green_speed_m"];
    const double end = one["mean_roll_time_s"];
    for (const double share : {0.0, 0.1, 0.25, 0.5, 0.75, 0.999, 1.001}) {
      const json takes = {{"seconds", share * end}, {"distance", distance}};
      cases.push_back({"place_of_mark", takes.dump()});
    }
    for (const char* unit : {"ft_in", "ft", "cm", "m"}) {
      const json takes = {{"metres", distance}, {"unit", unit}, {"decimal", ","}};
      cases.push_back({"show_length", takes.dump()});
    }
  }
}

} // namespace

json roll_json(const green::Roll& roll) {
  json one = {{"order", roll.order}};
  if (roll.distance) {
    one["distance"] = roll.distance->metres;
  }
  if (roll.score) {
    one["score"] = *roll.score;
  }
  if (roll.marks) {
    one["marks"] = json::array();
    for (const green::Mark& mark : *roll.marks) {
      json seen = {{"kind", std::string(word(mark.kind))}};
      if (mark.seconds) {
        seen["seconds"] = *mark.seconds;
      }
      one["marks"].push_back(seen);
    }
  } else {
    one["marks"] = nullptr;
  }
  return one;
}

json rolls_json(const green::Run& run) {
  json rolls = json::array();
  for (const green::Roll& roll : run.rolls) {
    rolls.push_back(roll_json(roll));
  }
  return rolls;
}

std::vector<Case> scenario_cases() {
  std::vector<Case> cases;
  for (const auto& file : scenarios::scenario_files(BAIZE_SOURCE_DIR "/tests/scenarios")) {
    const auto scenario = scenarios::read_scenario(file);
    if (!scenario) {
      std::fprintf(stderr, "%s\n", units::sentence(scenario.error()).c_str());
      std::exit(1);
    }
    std::map<std::string, json> last;
    for (const green::Visit& visit : scenario->records.visits) {
      add_visit(cases, visit, last);
    }
  }
  return cases;
}

std::vector<Case> reference_cases() {
  std::vector<Case> cases{{"fields", "{}"}};
  const json rules = read("roll_score/event_rule_cases.json");
  for (const json& one : rules["cases"]) {
    const json marks = counted_marks(one);
    cases.push_back({"offer", json{{"marks", marks}}.dump()});
    for (int score = 1; score <= 10; ++score) {
      cases.push_back({"contradicts", json{{"marks", marks}, {"score", score}}.dump()});
    }
  }
  for (const json& one : rules["worked_totals"]) {
    json takes = {{"rolls", json::array()}};
    for (const char* scores : {"scores", "scores_a", "scores_b"}) {
      for (const json& score : one.value(scores, json::array())) {
        takes["rolls"].push_back({{"score", score}});
      }
    }
    cases.push_back({"run_summary", takes.dump()});
  }
  add_speeds(cases);
  return cases;
}

std::vector<Case> all_cases() {
  std::vector<Case> all = scenario_cases();
  const std::vector<Case> known = reference_cases();
  const std::vector<Case> drawn = random_cases(10000, 20260503);
  all.insert(all.end(), known.begin(), known.end());
  all.insert(all.end(), drawn.begin(), drawn.end());
  return all;
}

} // namespace phone
