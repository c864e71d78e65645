// The fields that hold more than one value: marks of a roll, parameters of a work.
#include "fields.h"

#include <cmath>

namespace baize::journal {
namespace {

std::optional<green::MarkKind> mark_kind(const Value* kind) {
  const std::string* word = kind == nullptr ? nullptr : kind->text();
  return word == nullptr ? std::nullopt : green::find_mark_kind(*word);
}

} // namespace

std::optional<green::Mark> Fields::mark(std::string_view field, const Value& value) {
  const Value::Members* members = value.members();
  const Value* said = members == nullptr ? nullptr : journal::find(*members, "kind");
  const auto kind = mark_kind(said);
  if (!kind) {
    note("not_a_known_word", std::string(field), shown(said == nullptr ? value : *said),
         "a list of marks whose kind is bobble, chatter or snake");
    return std::nullopt;
  }
  green::Mark mark;
  mark.kind = *kind;
  for (const Member& member : *members) {
    const double* number = member.value.number();
    if (member.name == "seconds" && number != nullptr && std::isfinite(*number)) {
      mark.seconds = *number;
    } else if (member.name == "seconds" && !member.value.nothing()) {
      wrong("seconds", member.value, "a number");
    } else if (member.name != "kind" && member.name != "seconds") {
      note("unknown_field", shown(Value{member.name}), shown(member.value),
           "kind or seconds of a mark");
    }
  }
  return mark;
}

std::optional<std::vector<green::Mark>> Fields::marks(std::string_view field) {
  const Value* value = look(field);
  if (value == nullptr) {
    return std::nullopt;
  }
  if (value->list() == nullptr) {
    wrong(field, *value, "a list of marks");
    return std::nullopt;
  }
  std::vector<green::Mark> all;
  for (const Value& one : *value->list()) {
    if (const auto read = mark(field, one)) {
      all.push_back(*read);
    }
  }
  return all;
}

std::vector<green::Parameter> Fields::parameters(std::string_view field) {
  std::vector<green::Parameter> all;
  const Value* value = look(field);
  if (value == nullptr) {
    return all;
  }
  if (value->members() == nullptr) {
    wrong(field, *value, "an object of numbers and words");
    return all;
  }
  for (const Member& member : *value->members()) {
    const double* number = member.value.number();
    const std::string* word = member.value.text();
    if (number != nullptr && std::isfinite(*number)) {
      all.push_back({member.name, *number, ""});
    } else if (word != nullptr) {
      all.push_back({member.name, std::nullopt, *word});
    } else if (!member.value.nothing()) {
      wrong(member.name, member.value, "a number or a word");
    }
  }
  return all;
}

} // namespace baize::journal
