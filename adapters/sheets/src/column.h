#pragma once

#include "layout.h"

#include <string>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace baize::sheets {

/// A column that holds a work's parameter of this name.
struct ParameterColumn {
  std::string name;
  bool word = false;
};

/// Which member of a row a column holds. Its type says how cells are read and written.
template <class Row>
using Member = std::variant<
    std::string Row::*, std::optional<std::string> Row::*, std::optional<double> Row::*,
    std::optional<int> Row::*, std::optional<bool> Row::*, std::optional<units::Day> Row::*,
    std::optional<units::Minute> Row::*, std::optional<units::MonthDay> Row::*,
    std::optional<units::Length> Row::*, std::optional<green::Grass> Row::*,
    std::optional<green::Direction> Row::*, std::vector<double> Row::*, ParameterColumn>;

enum class Need { free, header, cell }; ///< header: the column; cell: a value in every row

template <class Row> struct Column {
  std::string name;
  Member<Row> member;
  Need need = Need::free;
};

template <class T> struct IsOptional : std::false_type {};
template <class T> struct IsOptional<std::optional<T>> : std::true_type {};

/// Calls `use` with the row's member, or with the parameter column.
template <class Row, class Member, class Use>
auto with_member(Row& row, const Member& member, Use use) {
  return std::visit(
      [&](const auto& which) {
        if constexpr (std::is_same_v<std::decay_t<decltype(which)>, ParameterColumn>) {
          return use(which);
        } else {
          return use(row.*which);
        }
      },
      member);
}

template <class Row> std::vector<Heading> headings(const std::vector<Column<Row>>& columns) {
  std::vector<Heading> all;
  for (const Column<Row>& column : columns) {
    const bool length = std::holds_alternative<std::optional<units::Length> Row::*>(column.member);
    const bool day = std::holds_alternative<std::optional<units::Day> Row::*>(column.member);
    all.push_back({column.name,
                   length ? Ending::length
                   : day  ? Ending::day
                          : Ending::none,
                   column.need != Need::free});
  }
  return all;
}

template <class Row> const green::Parameter* parameter(const Row& row, const std::string& name) {
  if constexpr (requires { row.parameters; }) {
    for (const green::Parameter& one : row.parameters) {
      if (one.name == name) {
        return &one;
      }
    }
  }
  return nullptr;
}

/// A cell's text; empty where there is nothing to write.
template <class Row>
std::string cell_text(const Row& row, const Column<Row>& column, const CellStyle& style) {
  return with_member(row, column.member, [&](const auto& held) -> std::string {
    if constexpr (std::is_same_v<std::decay_t<decltype(held)>, ParameterColumn>) {
      const green::Parameter* found = parameter(row, held.name);
      return found == nullptr ? ""
             : found->number  ? write_value(*found->number, style)
                              : found->word;
    } else {
      return present(held) ? write_value(held, style) : std::string();
    }
  });
}

/// Do two rows say the same in this column?
template <class Row> bool same_cell(const Row& a, const Row& b, const Column<Row>& column) {
  return std::visit(
      [&](const auto& which) {
        if constexpr (std::is_same_v<std::decay_t<decltype(which)>, ParameterColumn>) {
          const green::Parameter* in_a = parameter(a, which.name);
          const green::Parameter* in_b = parameter(b, which.name);
          return (in_a == nullptr) == (in_b == nullptr) && (in_a == nullptr || *in_a == *in_b);
        } else {
          return a.*which == b.*which;
        }
      },
      column.member);
}

template <class Row>
bool same_cells(const Row& a, const Row& b, const std::vector<Column<Row>>& columns) {
  for (const Column<Row>& column : columns) {
    if (!same_cell(a, b, column)) {
      return false;
    }
  }
  return true;
}

} // namespace baize::sheets
