#pragma once

#include <compare>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace baize::journal {

struct Member;

/// What an entry says of a field, as JSON knows values. Nothing (null) is said
/// too: what stood there is taken back. Numbers are one sort: 7 and 7.0 are equal.
struct Value {
  using List = std::vector<Value>;
  using Members = std::vector<Member>; ///< by name, each name once: see `sorted`

  std::variant<std::monostate, bool, double, std::string, List, Members> data;

  bool nothing() const { return std::holds_alternative<std::monostate>(data); }
  /// Null where the value is of another sort.
  const bool* flag() const { return std::get_if<bool>(&data); }
  const double* number() const { return std::get_if<double>(&data); }
  const std::string* text() const { return std::get_if<std::string>(&data); }
  const List* list() const { return std::get_if<List>(&data); }
  const Members* members() const { return std::get_if<Members>(&data); }

  /// Any order that is the same everywhere; it means nothing to people.
  friend bool operator==(const Value& a, const Value& b);
  friend bool operator<(const Value& a, const Value& b);
};

struct Member {
  std::string name;
  Value value;
  friend bool operator==(const Member& a, const Member& b);
  friend bool operator<(const Member& a, const Member& b);
};

/// Members by name; of a name that stands there twice the last is kept, as
/// readers of JSON do.
Value::Members sorted(Value::Members members);
/// Null where there is none of that name. `members` must be sorted.
const Value* find(const Value::Members& members, std::string_view name);

/// For a problem's sentence: a number, a text of up to 60 bytes, "a list of 3",
/// "an object", "true"; empty for nothing.
std::string shown(const Value& value);

} // namespace baize::journal
