#pragma once

#include "baize/journal/records.h"

#include <string>
#include <utility>
#include <vector>

// Entries as short as a test can be read: ids are numbers.
namespace journal_test {

using namespace baize;
using journal::Entry;
using journal::Kind;
using journal::Value;

/// 0190a0b0-0000-7000-8000-0000000000NN; greater numbers are greater ids.
inline std::string id(int number) {
  std::string digits = std::to_string(number);
  return "0190a0b0-0000-7000-8000-" + std::string(12 - digits.size(), '0') + digits;
}
inline const std::string kVisit = id(900001);
inline const std::string kRoll = id(900011);
inline const std::string kPhone = id(800001);
inline const std::string kOther = id(800002);

inline Value text(std::string said) {
  return Value{std::move(said)};
}
inline Value number(double said) {
  return Value{said};
}
inline Value flag(bool said) {
  return Value{said};
}
inline Value nothing() {
  return {};
}
inline Value mark(const char* kind) {
  return Value{Value::Members{{"kind", text(kind)}}};
}

/// Entry `number` of `kind` about `thing`, written over `over`.
inline Entry entry(int number, Kind kind, const std::string& thing, Value::Members set,
                   const std::vector<int>& over = {}) {
  Entry e;
  e.id = id(number);
  e.phone = kPhone;
  e.at = "2026-05-03T07:10:31.250Z";
  e.by = "ann";
  e.kind = kind;
  e.thing = thing;
  e.set = std::move(set);
  for (const int one : over) {
    e.over.push_back(id(one));
  }
  return journal::canonical(std::move(e));
}

inline Entry visit(int number, Value::Members set, const std::vector<int>& over = {}) {
  return entry(number, Kind::visit, kVisit, std::move(set), over);
}
inline Entry roll(int number, Value::Members set, const std::vector<int>& over = {}) {
  return entry(number, Kind::roll, kRoll, std::move(set), over);
}

/// What opens a visit at green 7 of the club "hill", closed at once.
inline Value::Members visit_fields() {
  return {{"club", text("hill")},      {"green", text("7")},    {"observer", text("ann")},
          {"day", text("2026-05-03")}, {"from", text("07:00")}, {"done", flag(true)}};
}
/// The first roll out at spot A, 3.05 m, score 8.
inline Value::Members roll_fields(int order = 1) {
  return {{"visit", text(kVisit)},
          {"spot", text("A")},
          {"direction", text("out")},
          {"order", number(order)},
          {"distance", number(3.05)},
          {"score", number(8)},
          {"marks", Value{Value::List{mark("snake")}}}};
}

} // namespace journal_test
