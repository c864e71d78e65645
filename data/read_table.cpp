#include "tables.h"

#include <sstream>

namespace baize::data {
namespace {

std::vector<std::string> split(const std::string& line) {
  std::vector<std::string> cells(1);
  for (const char c : line) {
    if (c == '\t') {
      cells.emplace_back();
    } else {
      cells.back() += c;
    }
  }
  return cells;
}

void check_cell(const std::string& place, const std::string& column, const std::string& cell) {
  if (cell.empty()) {
    throw TableError(place + ": " + column + " is empty; write - where there is nothing to say");
  }
  if (cell.front() == ' ' || cell.back() == ' ' || cell.back() == '\r') {
    throw TableError(place + ": " + column + " starts or ends with a blank");
  }
}

} // namespace

std::vector<Row> read_table(const std::string& name, const std::string& text,
                            const std::vector<std::string>& columns) {
  std::vector<Row> rows;
  std::istringstream in(text);
  std::string line;
  bool named = false;
  for (int number = 1; std::getline(in, line); ++number) {
    const std::string place = name + " line " + std::to_string(number);
    if (line.starts_with('#')) {
      continue;
    }
    const auto cells = split(line);
    if (!named) {
      if (cells != columns) {
        throw TableError(place + ": the columns are not those expected");
      }
      named = true;
      continue;
    }
    if (cells.size() != columns.size()) {
      throw TableError(place + ": " + std::to_string(cells.size()) + " cells where " +
                       std::to_string(columns.size()) + " are expected");
    }
    Row row{place, {}};
    for (std::size_t i = 0; i < cells.size(); ++i) {
      check_cell(place, columns[i], cells[i]);
      row.cells[columns[i]] = cells[i];
    }
    rows.push_back(row);
  }
  if (rows.empty()) {
    throw TableError(name + ": holds no line");
  }
  return rows;
}

} // namespace baize::data
