#include "baize/green/kinds.h"

#include "baize/units/number.h"

#include <algorithm>
#include <cmath>

namespace baize::green {
namespace {

template <class Entry> const Entry* named(std::span<const Entry> entries, std::string_view name) {
  const auto found = std::find_if(entries.begin(), entries.end(),
                                  [&](const Entry& entry) { return entry.name == name; });
  return found == entries.end() ? nullptr : &*found;
}

std::string word_clause(std::span<const std::string_view> words) {
  if (words.empty()) {
    return "words";
  }
  std::string text = "one of";
  for (const std::string_view word : words) {
    text += (word == words.front() ? " " : ", ") + std::string(word);
  }
  return text;
}

} // namespace

bool ValueRule::takes(double number) const {
  const bool inside = number >= lowest && number <= highest && !(above_lowest && number == lowest);
  return type != ValueType::word && inside &&
         (type != ValueType::whole || number == std::floor(number));
}

bool ValueRule::takes(std::string_view word) const {
  return type == ValueType::word && !word.empty() &&
         (words.empty() || std::find(words.begin(), words.end(), word) != words.end());
}

std::string ValueRule::clause() const {
  if (type == ValueType::word) {
    return word_clause(words);
  }
  const std::string low = units::write_number(lowest);
  const std::string high = units::write_number(highest);
  std::string text = type == ValueType::whole ? "a whole number " : "a number ";
  text += above_lowest ? "above " + low + " and up to " + high : "from " + low + " to " + high;
  if (!unit.empty()) {
    text += " " + std::string(unit);
  }
  return text;
}

const WorkKind* find_work_kind(std::string_view name) {
  return named(work_kinds(), name);
}

const ParameterKind* find_parameter(const WorkKind& kind, std::string_view name) {
  return named(kind.parameters, name);
}

const ParameterKind* leading_parameter(const WorkKind& kind) {
  const auto found = std::find_if(kind.parameters.begin(), kind.parameters.end(),
                                  [](const ParameterKind& parameter) { return parameter.leading; });
  return found == kind.parameters.end() ? nullptr : &*found;
}

const MeasuredField* find_field(std::string_view record, std::string_view name) {
  for (const MeasuredField& field : measured_fields()) {
    if (field.record == record && field.name == name) {
      return &field;
    }
  }
  return nullptr;
}

const MeasuredField* find_reading_kind(std::string_view name) {
  return named(reading_kinds(), name);
}

} // namespace baize::green
