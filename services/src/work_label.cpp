#include "baize/green/kinds.h"
#include "baize/services/season_review.h"
#include "baize/units/number.h"

#include <algorithm>

namespace baize::services {
namespace {

std::string lower_first(std::string_view title) {
  std::string text(title);
  if (!text.empty() && 'A' <= text.front() && text.front() <= 'Z') {
    text.front() = static_cast<char>(text.front() - 'A' + 'a');
  }
  return text;
}

std::string leading_value(const green::Parameter& parameter, const green::ParameterKind& kind) {
  if (!parameter.number) {
    return parameter.word.empty() ? std::string() : ": " + parameter.word;
  }
  std::string text = " " + units::write_number(*parameter.number);
  if (!kind.rule.unit.empty()) {
    text += " " + std::string(kind.rule.unit);
  }
  return text;
}

} // namespace

std::string work_label(const green::Work& work) {
  const green::WorkKind* kind = green::find_work_kind(work.kind);
  if (kind == nullptr) {
    return work.kind;
  }
  std::string label = lower_first(kind->title);
  const green::ParameterKind* leading = green::leading_parameter(*kind);
  if (leading == nullptr) {
    return label;
  }
  const auto found = std::find_if(
      work.parameters.begin(), work.parameters.end(),
      [&](const green::Parameter& parameter) { return parameter.name == leading->name; });
  return found == work.parameters.end() ? label : label + leading_value(*found, *leading);
}

} // namespace baize::services
