#include "baize/green/roll_score.h"
#include "baize/green/validate.h"
#include "checks.h"
#include "run_text.h"

#include <set>
#include <utility>

namespace baize::green {
namespace {

void check_roll(Checks& checks, const Run& run, const Roll& roll) {
  const std::string within = roll_text(run, roll);
  const bool anything = roll.distance || roll.marks || roll.score;
  checks.want(anything || run.total, "empty_roll", "roll", "",
              "a distance, marks or a score, or a total of the run", within);
  if (roll.distance) {
    checks.number(find_field("roll", "distance"), roll.distance->metres, "distance_out_of_range",
                  within);
  }
  checks.number(find_field("roll", "score"), roll.score, "score_out_of_range", within);
  if (!roll.marks) {
    return;
  }
  for (const Mark& mark : *roll.marks) {
    checks.number(find_field("roll", "mark_time"), mark.seconds, "mark_time_out_of_range", within);
  }
  const MarkCount marks = count(*roll.marks);
  checks.number(find_field("roll", "bobbles"), marks.bobbles, "too_many_marks", within);
  checks.number(find_field("roll", "chatters"), marks.chatters, "too_many_marks", within);
  checks.number(find_field("roll", "snakes"), marks.snakes, "too_many_marks", within);
}

void check_total(Checks& checks, const Run& run) {
  const std::string within = run_text(run);
  if (!run.total && !run.total_of) {
    return;
  }
  if (!run.total || !run.total_of) {
    checks.note(run.total ? "missing_total_of" : "missing_total", run.total ? "total_of" : "total",
                "", "given: a total and the number of its rolls go together", within);
    return;
  }
  const MeasuredField* of = find_field("run", "total_of");
  checks.number(of, *run.total_of, "total_of_out_of_range", within);
  if (!of->rule.takes(*run.total_of)) {
    return;
  }
  const int rolls = static_cast<int>(run.rolls.size());
  if (*run.total_of < rolls) {
    checks.note("total_of_out_of_range", "total_of", std::to_string(*run.total_of),
                "at least the " + std::to_string(rolls) + " rolls written down", within);
  }
  if (*run.total < *run.total_of || *run.total > 10 * *run.total_of) {
    checks.note("total_out_of_range", "total", std::to_string(*run.total),
                "from " + std::to_string(*run.total_of) + " to " +
                    std::to_string(10 * *run.total_of) + " for " + std::to_string(*run.total_of) +
                    " rolls scored 1 to 10",
                within);
  }
}

void check_run(Checks& checks, const Run& run) {
  constexpr int kMostRolls = 99;
  checks.want(!run.rolls.empty() || run.total, "empty_run", "run", "",
              "rolls, or a total of their scores", run_text(run));
  check_total(checks, run);
  std::set<int> orders;
  for (const Roll& roll : run.rolls) {
    checks.want(roll.order >= 1 && roll.order <= kMostRolls, "order_out_of_range", "order",
                std::to_string(roll.order), "a whole number from 1 to 99", run_text(run));
    checks.want(orders.insert(roll.order).second, "order_twice", "order",
                std::to_string(roll.order), "another number for each roll of the run",
                run_text(run));
    check_roll(checks, run, roll);
  }
}

void check_times(Checks& checks, const Visit& visit) {
  checks.minute(visit.from, "from");
  checks.minute(visit.to, "to");
  if (visit.to && !visit.from) {
    checks.note("missing_from", "from", "", "given where a visit's end is given");
  }
  if (visit.from && visit.to && *visit.to < *visit.from) {
    checks.note("ends_before_it_begins", "to", units::iso(*visit.to),
                "at or after the visit's beginning at " + units::iso(*visit.from));
  }
}

void check_conditions(Checks& checks, const Conditions& conditions) {
  checks.number(find_field("visit", "hours_since_mowing"), conditions.hours_since_mowing,
                "hours_out_of_range");
  checks.number(find_field("visit", "hours_since_rolling"), conditions.hours_since_rolling,
                "hours_out_of_range");
  checks.word(find_field("visit", "dew"), conditions.dew);
  checks.word(find_field("visit", "wind"), conditions.wind);
  checks.word(find_field("visit", "surface"), conditions.surface);
}

} // namespace

std::vector<units::Problem> validate(const Visit& visit, units::Day today) {
  Checks checks(visit.source);
  checks.present(visit.id, "id");
  checks.present(visit.green, "green");
  checks.not_after(visit.day, today, "future_visit", "day");
  check_times(checks, visit);
  check_conditions(checks, visit.conditions);
  checks.want(!visit.runs.empty(), "no_runs", "runs", "", "at least one run of rolls");
  std::set<std::pair<std::string, Direction>> seen;
  for (const Run& run : visit.runs) {
    checks.want(seen.emplace(run.spot, run.direction).second, "run_twice", "run", run_text(run),
                "one run for each spot and direction, with all its rolls");
    check_run(checks, run);
  }
  return checks.take();
}

} // namespace baize::green
