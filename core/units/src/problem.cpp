#include "baize/units/problem.h"

#include <utility>

namespace baize::units {
namespace {

/// "rolls.csv line 12: score is '11'"
std::string found(const Problem& problem) {
  std::string text;
  if (!problem.place.empty()) {
    text = problem.place + ": ";
  }
  text += problem.field.empty() ? "the value" : problem.field;
  text += problem.value.empty() ? " is missing" : " is '" + problem.value + "'";
  return text;
}

} // namespace

std::string sentence(const Problem& problem) {
  return found(problem) + ", but must be " + problem.rule + ".";
}

std::string remark_sentence(const Problem& problem) {
  return found(problem) + "; expected " + problem.rule + ".";
}

Refusal refuse(std::string code, std::string field, std::string value, std::string rule) {
  return Refusal(Problem{std::move(code), std::move(field), std::move(value), std::move(rule), {}});
}

} // namespace baize::units
