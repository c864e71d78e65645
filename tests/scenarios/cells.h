#pragma once

#include "baize/units/day.h"
#include "baize/units/number.h"
#include "scenarios/table.h"

#include <algorithm>
#include <optional>

namespace baize::scenarios {

/// Reads cells of one row into typed places. The first cell that cannot be read
/// is kept as the problem; an absent cell leaves its place as it was.
class Cells {
 public:
  Cells(const Row& row, const std::string& file) : row_(row), file_(file) {}

  template <class T> void day(const std::string& column, T& to) {
    set(column, to, [](const std::string& t) { return units::parse_iso_day(t); });
  }
  template <class T> void minute(const std::string& column, T& to) {
    set(column, to, [](const std::string& t) { return units::parse_minute(t); });
  }
  template <class T> void month_day(const std::string& column, T& to) {
    set(column, to, [](const std::string& t) { return units::parse_month_day(t); });
  }
  template <class T> void number(const std::string& column, T& to) {
    set(column, to, [](const std::string& t) { return units::parse_number(t); });
  }
  void text(const std::string& column, std::string& to) {
    if (row_.has(column)) {
      to = row_.text(column);
    }
  }
  void refuse(const std::string& column, const std::string& rule) {
    if (!problem_) {
      problem_ =
          units::Problem{"bad_scenario", column, row_.text(column), rule, place(file_, row_.line)};
    }
  }
  const std::optional<units::Problem>& problem() const { return problem_; }

 private:
  template <class T, class Parse> void set(const std::string& column, T& to, const Parse& parse) {
    if (!row_.has(column)) {
      return;
    }
    if (const auto parsed = parse(row_.text(column))) {
      to = *parsed;
    } else {
      refuse(column, parsed.error().rule);
    }
  }

  const Row& row_;
  const std::string& file_;
  std::optional<units::Problem> problem_;
};

/// "a,b,c" in its parts.
inline std::vector<std::string> split(const std::string& text, char mark) {
  std::vector<std::string> parts;
  for (std::size_t from = 0; from <= text.size() && !text.empty();) {
    const std::size_t to = std::min(text.find(mark, from), text.size());
    parts.push_back(text.substr(from, to - from));
    from = to + 1;
  }
  return parts;
}

} // namespace baize::scenarios
