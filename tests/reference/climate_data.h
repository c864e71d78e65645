#pragma once

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

namespace baize::climate_reference {

inline std::ifstream open(const std::string& name) {
  std::ifstream in(std::string(BAIZE_SOURCE_DIR) + "/tests/reference/data/climate/" + name);
  EXPECT_TRUE(in) << name;
  return in;
}

inline nlohmann::json read_json(const std::string& name) {
  auto in = open(name);
  return nlohmann::json::parse(in);
}

/// The cases of a file, by their id.
inline std::map<std::string, nlohmann::json> cases(const std::string& file,
                                                   const std::string& key = "cases") {
  std::map<std::string, nlohmann::json> result;
  const nlohmann::json whole = read_json(file);
  for (const auto& one : whole.at(key)) {
    result[one.at("id")] = one;
  }
  return result;
}

using Row = std::map<std::string, std::string>;

/// A plain comma-separated file (no quotes in these), each row by its headers.
inline std::vector<Row> read_csv(const std::string& name) {
  auto in = open(name);
  const auto split = [](const std::string& line) {
    std::vector<std::string> cells;
    std::stringstream stream(line);
    for (std::string cell; std::getline(stream, cell, ',');) {
      cells.push_back(cell);
    }
    return cells;
  };
  std::vector<Row> rows;
  std::string line;
  std::getline(in, line);
  const auto header = split(line);
  while (std::getline(in, line)) {
    const auto cells = split(line);
    EXPECT_EQ(cells.size(), header.size()) << line;
    Row row;
    for (std::size_t i = 0; i < std::min(cells.size(), header.size()); ++i) {
      row[header[i]] = cells[i];
    }
    rows.push_back(row);
  }
  return rows;
}

} // namespace baize::climate_reference
