#pragma once

#include "baize/units/problem.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace baize::scenarios {

/// One line of a table: its cells by column. "-" stands for nothing.
struct Row {
  int line = 0;
  std::map<std::string, std::string> cells;

  bool has(const std::string& column) const { return !text(column).empty(); }
  /// The cell; empty where the table has no such column or the cell is "-".
  std::string text(const std::string& column) const;
};

/// A section of a scenario: "[name]", a line of column names, then rows. A column
/// named "text" comes last and takes the rest of its line.
struct Table {
  std::string name;
  int line = 0;
  std::vector<std::string> columns;
  std::vector<Row> rows;
};

/// "#" begins a comment anywhere in a line; empty lines count for nothing. Refuses rows
/// with too few or too many cells, cells before a section and sections without columns.
units::Result<std::vector<Table>> parse_tables(std::string_view text, const std::string& file);

/// The refusal's place: "plain.txt line 12".
std::string place(const std::string& file, int line);

} // namespace baize::scenarios
