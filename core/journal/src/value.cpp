#include "baize/journal/value.h"

#include "baize/units/number.h"

#include <algorithm>

namespace baize::journal {

bool operator==(const Member& a, const Member& b) {
  return a.name == b.name && a.value == b.value;
}

bool operator<(const Member& a, const Member& b) {
  return a.name != b.name ? a.name < b.name : a.value < b.value;
}

bool operator==(const Value& a, const Value& b) {
  return a.data == b.data;
}

bool operator<(const Value& a, const Value& b) {
  return a.data < b.data;
}

Value::Members sorted(Value::Members members) {
  std::stable_sort(members.begin(), members.end(),
                   [](const Member& a, const Member& b) { return a.name < b.name; });
  Value::Members kept;
  for (Member& member : members) {
    if (!kept.empty() && kept.back().name == member.name) {
      kept.back() = std::move(member);
    } else {
      kept.push_back(std::move(member));
    }
  }
  return kept;
}

const Value* find(const Value::Members& members, std::string_view name) {
  const auto at =
      std::lower_bound(members.begin(), members.end(), name,
                       [](const Member& member, std::string_view n) { return member.name < n; });
  return at != members.end() && at->name == name ? &at->value : nullptr;
}

namespace {

/// Cut between letters of UTF-8, not within one.
std::string shortened(const std::string& text) {
  constexpr std::size_t kLongest = 60;
  if (text.size() <= kLongest) {
    return text;
  }
  std::size_t end = kLongest;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) {
    --end;
  }
  return text.substr(0, end) + "...";
}

} // namespace

std::string shown(const Value& value) {
  if (const bool* flag = value.flag()) {
    return *flag ? "true" : "false";
  }
  if (const double* number = value.number()) {
    return units::write_number(*number);
  }
  if (const std::string* text = value.text()) {
    return shortened(*text);
  }
  if (const Value::List* list = value.list()) {
    return "a list of " + std::to_string(list->size());
  }
  return value.members() != nullptr ? "an object" : "";
}

} // namespace baize::journal
