#pragma once

#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

namespace baize::peers {

inline std::vector<std::string> cells_of(const std::string& line) {
  std::vector<std::string> cells;
  std::istringstream in(line);
  for (std::string cell; std::getline(in, cell, '\t');) {
    cells.push_back(cell);
  }
  return cells;
}

/// The table that a comparison's script writes: columns by their name.
inline std::map<std::string, std::vector<std::string>> read_sheet() {
  std::map<std::string, std::vector<std::string>> sheet;
  std::string line;
  std::getline(std::cin, line);
  const auto names = cells_of(line);
  while (std::getline(std::cin, line)) {
    const auto cells = cells_of(line);
    for (std::size_t k = 0; k < names.size() && k < cells.size(); ++k) {
      sheet[names[k]].push_back(cells[k]);
    }
  }
  return sheet;
}

inline std::vector<double> numbers(const std::vector<std::string>& cells) {
  std::vector<double> values;
  for (const std::string& cell : cells) {
    values.push_back(std::strtod(cell.c_str(), nullptr));
  }
  return values;
}

inline std::vector<int> whole_numbers(const std::vector<std::string>& cells) {
  std::vector<int> values;
  for (const std::string& cell : cells) {
    values.push_back(std::atoi(cell.c_str()));
  }
  return values;
}

inline void say(const std::string& name, double value) {
  std::printf("%s\t%.17g\n", name.c_str(), value);
}

} // namespace baize::peers
