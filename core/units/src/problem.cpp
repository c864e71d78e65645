#include "baize/units/problem.h"

#include <utility>

namespace baize::units {

std::string sentence(const Problem& problem) {
  std::string text;
  if (!problem.place.empty()) {
    text = problem.place + ": ";
  }
  text += problem.field.empty() ? "the value" : problem.field;
  text += problem.value.empty() ? " is missing" : " is '" + problem.value + "'";
  text += ", but must be " + problem.rule + ".";
  return text;
}

Refusal refuse(std::string code, std::string field, std::string value, std::string rule) {
  return Refusal(Problem{std::move(code), std::move(field), std::move(value), std::move(rule), {}});
}

} // namespace baize::units
