#include "baize/journal/entry.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

namespace baize::journal {
namespace {

constexpr std::array<std::string_view, 6> kKinds{"visit",   "roll", "total",
                                                 "reading", "work", "photo"};

/// Gathers what is wrong with one entry; every problem says which entry.
class Checks {
 public:
  explicit Checks(const Entry& entry) : place_("entry " + shown(Value{entry.id})) {}

  void want(bool good, const char* code, std::string field, std::string value, std::string rule) {
    if (!good) {
      problems_.push_back({code, std::move(field), std::move(value), std::move(rule), place_});
    }
  }
  void uuid(const std::string& text, const char* field) {
    want(is_uuid(text), "not_a_uuid", field, shown(Value{text}),
         "a UUID of version 7 in lower case");
  }
  void value(const std::string& field, const Value& value, std::size_t depth);
  std::vector<units::Problem> take() { return std::move(problems_); }

 private:
  std::string place_;
  std::vector<units::Problem> problems_;
};

void Checks::value(const std::string& field, const Value& value, std::size_t depth) {
  if (depth > kDeepest) {
    want(false, "too_deep", field, shown(value),
         "no deeper than " + std::to_string(kDeepest) + " levels");
    return;
  }
  if (const double* number = value.number()) {
    want(std::isfinite(*number), "not_finite", field, shown(value), "a finite number");
  }
  if (const std::string* text = value.text()) {
    want(text->size() <= kLongestText, "text_too_long", field, shown(value),
         "at most " + std::to_string(kLongestText) + " bytes");
  }
  if (const Value::List* list = value.list()) {
    want(list->size() <= kLongestList, "list_too_long", field, shown(value),
         "at most " + std::to_string(kLongestList) + " items");
    for (std::size_t i = 0; i < std::min(list->size(), kLongestList); ++i) {
      this->value(field, (*list)[i], depth + 1);
    }
  }
  if (const Value::Members* members = value.members()) {
    want(members->size() <= kMostMembers, "too_many_members", field.empty() ? "set" : field,
         std::to_string(members->size()), "at most " + std::to_string(kMostMembers) + " members");
    for (std::size_t i = 0; i < std::min(members->size(), kMostMembers); ++i) {
      const Member& member = (*members)[i];
      want(member.name.size() <= kLongestName, "name_too_long", "name", shown(Value{member.name}),
           "at most " + std::to_string(kLongestName) + " bytes");
      this->value(field.empty() ? member.name : field, member.value, depth + 1);
    }
  }
}

} // namespace

std::string_view name(Kind kind) {
  return kKinds[static_cast<std::size_t>(kind)];
}

std::optional<Kind> kind_of(std::string_view word) {
  for (std::size_t i = 0; i < kKinds.size(); ++i) {
    if (kKinds[i] == word) {
      return static_cast<Kind>(i);
    }
  }
  return std::nullopt;
}

Entry canonical(Entry entry) {
  entry.set = sorted(std::move(entry.set));
  std::sort(entry.over.begin(), entry.over.end());
  entry.over.erase(std::unique(entry.over.begin(), entry.over.end()), entry.over.end());
  return entry;
}

bool before(const Entry& a, const Entry& b) {
  const auto key = [](const Entry& e) {
    return std::tie(e.id, e.kind, e.thing, e.phone, e.at, e.by, e.over, e.set);
  };
  return key(a) < key(b);
}

std::vector<units::Problem> check(const Entry& entry) {
  Checks checks(entry);
  checks.uuid(entry.id, "id");
  checks.uuid(entry.phone, "phone");
  checks.uuid(entry.thing, "thing");
  checks.want(parse_instant(entry.at).has_value(), "not_an_instant", "at", shown(Value{entry.at}),
              "a time in UTC written YYYY-MM-DDTHH:MM:SS.mmmZ");
  checks.want(entry.by.size() <= kLongestName, "name_too_long", "by", shown(Value{entry.by}),
              "at most " + std::to_string(kLongestName) + " bytes");
  checks.want(!entry.set.empty(), "nothing_set", "set", "", "at least one field with its value");
  checks.value("", Value{entry.set}, 0);
  checks.want(entry.over.size() <= kMostOver, "list_too_long", "over",
              std::to_string(entry.over.size()),
              "at most " + std::to_string(kMostOver) + " entries");
  for (std::size_t i = 0; i < std::min(entry.over.size(), kMostOver); ++i) {
    checks.uuid(entry.over[i], "over");
    checks.want(entry.over[i] != entry.id, "over_itself", "over", entry.over[i],
                "another entry than the one that names it");
  }
  return checks.take();
}

} // namespace baize::journal
