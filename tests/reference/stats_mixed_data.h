#pragma once

#include "reference/stats_model_data.h"

#include <map>
#include <sstream>
#include <vector>

namespace baize::stats_reference {

/// A table of mixed_models: text cells, without quotes.
class MixedTable {
 public:
  explicit MixedTable(const std::string& file) {
    auto in = open_model_data("mixed_models/" + file);
    std::string line;
    std::getline(in, line);
    names_ = cells(line);
    while (std::getline(in, line)) {
      rows_.push_back(cells(line));
    }
  }

  std::vector<double> numbers(const std::string& name) const {
    std::vector<double> out;
    for (const auto& row : rows_) {
      out.push_back(std::stod(row[column(name)]));
    }
    return out;
  }

  /// Groups numbered in order of appearance, or by their own number; of two columns
  /// together where a second is named.
  std::vector<int> groups(const std::string& name, const std::string& second = "") const {
    std::map<std::string, int> seen;
    std::vector<int> out;
    for (const auto& row : rows_) {
      std::string label = row[column(name)];
      const bool number = label.find_first_not_of("0123456789") == std::string::npos;
      if (number && second.empty()) {
        out.push_back(std::stoi(label));
        continue;
      }
      label += second.empty() ? "" : " " + row[column(second)];
      out.push_back(seen.emplace(label, static_cast<int>(seen.size())).first->second);
    }
    return out;
  }

  /// One column of 0 and 1 for each level, in order of appearance.
  std::vector<std::vector<double>> indicators(const std::string& name) const {
    std::map<std::string, std::size_t> seen;
    std::vector<std::size_t> level;
    for (const auto& row : rows_) {
      level.push_back(seen.emplace(row[column(name)], seen.size()).first->second);
    }
    std::vector<std::vector<double>> out(seen.size(), std::vector<double>(rows_.size(), 0));
    for (std::size_t r = 0; r < level.size(); ++r) {
      out[level[r]][r] = 1;
    }
    return out;
  }

 private:
  static std::vector<std::string> cells(const std::string& line) {
    std::vector<std::string> out;
    std::istringstream in(line);
    std::string cell;
    while (std::getline(in, cell, ',')) {
      out.push_back(cell);
    }
    return out;
  }
  std::size_t column(const std::string& name) const {
    for (std::size_t j = 0; j < names_.size(); ++j) {
      if (names_[j] == name) {
        return j;
      }
    }
    ADD_FAILURE() << "no column " << name;
    return 0;
  }

  std::vector<std::string> names_;
  std::vector<std::vector<std::string>> rows_;
};

inline nlohmann::json mixed_case(const std::string& id) {
  const auto all = model_json("mixed_models/expected.json");
  for (const auto& one : all.at("cases")) {
    if (one.at("id") == id) {
      return one;
    }
  }
  ADD_FAILURE() << id;
  return {};
}

} // namespace baize::stats_reference
