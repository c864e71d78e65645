#include "scenarios/cells.h"
#include "scenarios/records.h"

#include <algorithm>
#include <cmath>

namespace baize::scenarios {
namespace {

/// Every number column must hold a number: a slip would else never agree, or worse, be skipped.
std::optional<units::Problem> check_numbers(const Row& row, const std::string& file,
                                            const std::vector<std::string>& columns) {
  Cells cells(row, file);
  for (const std::string& column : columns) {
    if (row.has(column) && !cell_number(row.text(column))) {
      cells.refuse(column, "a number or a fraction such as 46/6");
    }
  }
  return cells.problem();
}

} // namespace

std::optional<double> cell_number(const std::string& cell) {
  const auto parts = split(cell, '/');
  if (parts.empty() || parts.size() > 2) {
    return std::nullopt;
  }
  const auto above = units::parse_number(parts.front());
  const auto below = units::parse_number(parts.size() == 2 ? parts.back() : "1");
  return above && below && *below != 0 ? std::optional(*above / *below) : std::nullopt;
}

bool agrees(const Row& row, const std::string& column, std::optional<double> value) {
  if (!row.cells.contains(column)) {
    return true;
  }
  const auto wanted = cell_number(row.text(column));
  if (!wanted || !value) {
    return !row.has(column) && !value;
  }
  return std::abs(*wanted - *value) <= 1e-9 * std::max(1.0, std::abs(*wanted));
}

bool agrees(const Row& row, const std::string& column, const std::optional<std::string>& value) {
  return !row.cells.contains(column) || row.text(column) == value.value_or("");
}

std::optional<units::Problem> Builder::loss(const Row& row) {
  scenario_.losses.push_back(row);
  return check_numbers(row, file_,
                       {"standard", "before", "trough", "depth", "area", "low", "high",
                        "growth_area", "visits_after"});
}

std::optional<units::Problem> Builder::recovery(const Row& row) {
  scenario_.recovery.push_back(row);
  return check_numbers(row, file_, {"after_days", "by_days", "after_growth", "by_growth"});
}

std::optional<units::Problem> Builder::ledger(const Row& row) {
  scenario_.ledgers.push_back(row);
  units::Day day;
  Cells cells(row, file_);
  cells.day("first", day);
  cells.day("last", day);
  auto numbers = check_numbers(row, file_,
                               {"measured_true", "measured_not", "between_true", "unmeasured",
                                "closed", "fewest_true", "most_true", "open"});
  return cells.problem() ? cells.problem() : numbers;
}

std::optional<units::Problem> Builder::note(const Row& row) {
  scenario_.notes.push_back(row);
  return std::nullopt;
}

} // namespace baize::scenarios
