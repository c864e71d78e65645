#include "baize/green/validate.h"
#include "checks.h"

#include <algorithm>
#include <set>

namespace baize::green {
namespace {

/// A plan further ahead is a slip in the year.
constexpr int kPlanDays = 5 * 366;

void check_parameter(Checks& checks, const WorkKind& kind, const Parameter& parameter) {
  const ParameterKind* known = find_parameter(kind, parameter.name);
  if (known == nullptr) {
    std::string rule = "one of the parameters of " + std::string(kind.name) + ":";
    for (const ParameterKind& one : kind.parameters) {
      rule += " " + std::string(one.name);
    }
    checks.note("unknown_parameter", "parameter", parameter.name, rule);
    return;
  }
  const bool wants_word = known->rule.type == ValueType::word;
  const bool good = wants_word ? !parameter.number && known->rule.takes(parameter.word)
                               : parameter.word.empty() && parameter.number &&
                                     known->rule.takes(*parameter.number);
  if (!good) {
    const std::string value = parameter.number ? shown(*parameter.number) : parameter.word;
    checks.note("parameter_out_of_range", parameter.name, value, known->rule.clause());
  }
}

void check_parameters(Checks& checks, const Work& work) {
  const WorkKind* kind = find_work_kind(work.kind);
  if (kind == nullptr) {
    std::string rule = "one of";
    for (const WorkKind& one : work_kinds()) {
      rule += " " + std::string(one.name);
    }
    checks.note("unknown_kind", "kind", work.kind, rule);
    return;
  }
  std::set<std::string> seen;
  for (const Parameter& parameter : work.parameters) {
    checks.want(seen.insert(parameter.name).second, "parameter_twice", "parameter", parameter.name,
                "stated once only");
    check_parameter(checks, *kind, parameter);
  }
  const bool closing = kind->work_class == WorkClass::closing;
  checks.want(!closing || !work.disruptive.value_or(false), "closing_is_not_disruptive",
              "disruptive", "yes", "left empty for a work that shuts the green");
}

} // namespace

std::vector<units::Problem> validate(const Work& work, units::Day today) {
  Checks checks(work.source);
  checks.present(work.id, "id");
  check_parameters(checks, work);
  const units::Day last = work.until.value_or(work.day);
  if (last < work.day) {
    checks.note("ends_before_it_begins", "until", units::iso(last),
                "on or after the work's first day, " + units::iso(work.day));
  }
  const units::Day farthest = today + kPlanDays;
  if (std::max(last, work.day) > farthest) {
    checks.note("plan_too_far", work.day > farthest ? "day" : "until",
                units::iso(std::max(last, work.day)),
                "no later than five years ahead, " + units::iso(farthest));
  }
  checks.minute(work.at, "at");
  checks.different(work.greens, "green", "green_twice");
  return checks.take();
}

} // namespace baize::green
