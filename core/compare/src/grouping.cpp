#include "baize/compare/grouping.h"

#include "baize/units/number.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace baize::compare {
namespace {

using units::Problem;

std::string words(std::string_view name) {
  std::string text(name);
  std::replace(text.begin(), text.end(), '_', ' ');
  return text;
}

std::string with_unit(double value, std::string_view unit) {
  const std::string number = units::write_number(value);
  return unit.empty() ? number : number + " " + std::string(unit);
}

std::string band(double value, const std::vector<double>& cuts, std::string_view unit) {
  const auto above = std::upper_bound(cuts.begin(), cuts.end(), value);
  if (above == cuts.begin()) {
    return "under " + with_unit(cuts.front(), unit);
  }
  if (above == cuts.end()) {
    return with_unit(cuts.back(), unit) + " or more";
  }
  return units::write_number(*(above - 1)) + " to under " + with_unit(*above, unit);
}

std::string value_of(const green::Work& work, const green::ParameterKind& parameter,
                     const std::vector<double>& cuts) {
  for (const green::Parameter& one : work.parameters) {
    if (one.name != parameter.name) {
      continue;
    }
    if (!one.number) {
      return words(one.word);
    }
    return cuts.empty() ? with_unit(*one.number, parameter.rule.unit)
                        : band(*one.number, cuts, parameter.rule.unit);
  }
  return "not stated";
}

std::string company_of(const green::Work& work, const std::string& green,
                       const std::vector<green::Work>& works, const Grouping& grouping) {
  std::string with;
  std::string without;
  for (const std::string& kind : grouping.alongside) {
    const bool done = std::any_of(works.begin(), works.end(), [&](const green::Work& other) {
      return other.kind == kind && other.id != work.id && green::touches(other, green, work.half) &&
             other.day >= work.day - grouping.alongside_before_days &&
             other.day <= work.day + grouping.alongside_after_days;
    });
    if (done) {
      with += (with.empty() ? " with " : " and ") + words(kind);
    }
    without += (without.empty() ? " without " : " or ") + words(kind);
  }
  return with.empty() ? without : with;
}

bool known_parameter(const Grouping& grouping, bool& number) {
  for (const green::WorkKind& kind : green::work_kinds()) {
    if (!grouping.kind.empty() && kind.name != grouping.kind) {
      continue;
    }
    if (const auto* parameter = green::find_parameter(kind, grouping.by)) {
      number = parameter->rule.type != green::ValueType::word;
      return true;
    }
  }
  return false;
}

} // namespace

std::optional<Problem> Grouping::problem() const {
  std::vector<std::string> kinds = alongside;
  if (!kind.empty()) {
    kinds.push_back(kind);
  }
  for (const std::string& one : kinds) {
    if (green::find_work_kind(one) == nullptr) {
      return Problem{"unknown_kind", "kind", one, "a kind of work from the table of kinds", ""};
    }
  }
  bool number = false;
  if (!by.empty() && !known_parameter(*this, number)) {
    return Problem{"not_a_parameter", "by", by,
                   kind.empty() ? "a parameter of some kind of work" : "a parameter of " + kind,
                   ""};
  }
  if (!cuts.empty() && !number) {
    return Problem{"not_a_parameter", "by", by,
                   "a parameter that is a number, where cuts are given", ""};
  }
  for (std::size_t i = 0; i < cuts.size(); ++i) {
    if (!std::isfinite(cuts[i]) || (i > 0 && !(cuts[i] > cuts[i - 1]))) {
      return Problem{"cuts_out_of_order", "cuts", units::write_number(cuts[i]),
                     "a number above the cut before it", ""};
    }
  }
  for (const int days : {alongside_before_days, alongside_after_days}) {
    if (days < 0 || days > 60) {
      return Problem{"alongside_out_of_range", "alongside", std::to_string(days),
                     "a whole number of days from 0 to 60", ""};
    }
  }
  return std::nullopt;
}

std::string method_of(const green::Work& work, const std::string& green,
                      const std::vector<green::Work>& works, const Grouping& grouping) {
  std::string method = words(work.kind);
  const green::WorkKind* kind = green::find_work_kind(work.kind);
  const green::ParameterKind* parameter =
      kind == nullptr ? nullptr : green::find_parameter(*kind, grouping.by);
  if (parameter != nullptr) {
    method += ", " + words(parameter->name) + " " + value_of(work, *parameter, grouping.cuts);
  }
  return method + company_of(work, green, works, grouping);
}

} // namespace baize::compare
