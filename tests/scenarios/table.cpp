#include "scenarios/table.h"

#include <sstream>

namespace baize::scenarios {
namespace {

std::string strip(const std::string& text) {
  const auto first = text.find_first_not_of(" \t\r");
  if (first == std::string::npos) {
    return {};
  }
  return text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

std::vector<std::string> words(const std::string& line) {
  std::istringstream in(line);
  std::vector<std::string> found;
  for (std::string word; in >> word;) {
    found.push_back(word);
  }
  return found;
}

units::Refusal refuse_line(const std::string& file, int line, const std::string& value,
                           const std::string& rule) {
  return units::Refusal(units::Problem{"bad_scenario", "line", value, rule, place(file, line)});
}

/// Cells of a line; the last column, where it takes the rest, keeps its spaces.
std::vector<std::string> cells_of(const Table& table, const std::string& line) {
  const bool rest = table.columns.back() == "text";
  std::vector<std::string> cells = words(line);
  if (!rest || cells.size() <= table.columns.size()) {
    return cells;
  }
  std::istringstream in(line);
  cells.resize(table.columns.size());
  std::string skipped;
  for (std::size_t i = 0; i + 1 < table.columns.size(); ++i) {
    in >> skipped;
  }
  std::getline(in, cells.back());
  cells.back() = strip(cells.back());
  return cells;
}

} // namespace

std::string Row::text(const std::string& column) const {
  const auto found = cells.find(column);
  return found == cells.end() || found->second == "-" ? std::string() : found->second;
}

std::string place(const std::string& file, int line) {
  return file + " line " + std::to_string(line);
}

units::Result<std::vector<Table>> parse_tables(std::string_view text, const std::string& file) {
  std::vector<Table> tables;
  std::istringstream in{std::string(text)};
  int number = 0;
  for (std::string raw; std::getline(in, raw);) {
    ++number;
    const std::string line = strip(raw.substr(0, raw.find('#')));
    if (line.empty()) {
      continue;
    }
    if (line.front() == '[' && line.back() == ']') {
      tables.push_back({line.substr(1, line.size() - 2), number, {}, {}});
    } else if (tables.empty()) {
      return refuse_line(file, number, line, "preceded by a [section]");
    } else if (tables.back().columns.empty()) {
      tables.back().columns = words(line);
    } else {
      const Table& table = tables.back();
      const auto cells = cells_of(table, line);
      if (cells.size() != table.columns.size()) {
        return refuse_line(file, number, line,
                           std::to_string(table.columns.size()) + " cells, as the columns");
      }
      Row row{number, {}};
      for (std::size_t i = 0; i < cells.size(); ++i) {
        row.cells[table.columns[i]] = cells[i];
      }
      tables.back().rows.push_back(std::move(row));
    }
  }
  for (const Table& table : tables) {
    if (table.columns.empty()) {
      return refuse_line(file, table.line, table.name, "followed by its column names");
    }
  }
  return tables;
}

} // namespace baize::scenarios
