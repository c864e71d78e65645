#pragma once

#include "baize/stats/censored_time.h"
#include "reference/stats_model_data.h"

#include <limits>
#include <sstream>
#include <string>
#include <vector>

namespace baize::stats_reference {

struct SurvivalRow {
  stats::CensoredTime time;
  std::string group;
};

/// A plain comma-separated file, its cells by row, without the first row.
inline std::vector<std::vector<std::string>> survival_cells(const std::string& name) {
  auto in = open_model_data("survival/" + name);
  std::vector<std::vector<std::string>> rows;
  std::string line;
  std::getline(in, line);
  while (std::getline(in, line)) {
    std::vector<std::string> cells;
    std::istringstream parts(line);
    for (std::string cell; std::getline(parts, cell, ',');) {
      std::erase(cell, '"');
      std::erase(cell, '\r');
      cells.push_back(cell);
    }
    rows.push_back(cells);
  }
  EXPECT_FALSE(rows.empty()) << name;
  return rows;
}

inline double survival_number(const std::string& cell) {
  return cell.empty() || cell == "Inf" ? std::numeric_limits<double>::infinity() : std::stod(cell);
}

inline std::vector<SurvivalRow> breast_cosmesis() {
  std::vector<SurvivalRow> rows;
  for (const auto& cells : survival_cells("breast_cosmesis_1985.csv")) {
    rows.push_back({{survival_number(cells[0]), survival_number(cells[1])}, cells[2]});
  }
  return rows;
}

inline std::vector<SurvivalRow> interval_diabetes() {
  std::vector<SurvivalRow> rows;
  for (const auto& cells : survival_cells("interval_diabetes.csv")) {
    rows.push_back({{survival_number(cells[1]), survival_number(cells[2])}, cells[3]});
  }
  return rows;
}

inline std::vector<SurvivalRow> remission() {
  std::vector<SurvivalRow> rows;
  for (const auto& cells : survival_cells("remission_6mp.csv")) {
    const double time = survival_number(cells[1]);
    const double end = cells[2] == "1" ? time : std::numeric_limits<double>::infinity();
    rows.push_back({{time, end}, cells[3]});
  }
  return rows;
}

} // namespace baize::stats_reference
