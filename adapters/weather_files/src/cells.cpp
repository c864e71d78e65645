#include "cells.h"

#include "baize/units/number.h"
#include "text.h"

#include <algorithm>
#include <array>

namespace baize::weather_files {

bool says_missing(std::string_view cell) {
  constexpr std::array<std::string_view, 9> kWords{"",  "na", "n/a", "nan", "null",
                                                   "-", "--", "---", "m"};
  constexpr std::array<std::string_view, 4> kNumbers{"-9999", "-999", "-9999.0", "-999.0"};
  const std::string small = lower(cell);
  return std::find(kWords.begin(), kWords.end(), small) != kWords.end() ||
         std::find(kNumbers.begin(), kNumbers.end(), small) != kNumbers.end();
}

bool says_trace(std::string_view cell) {
  const std::string small = lower(cell);
  return small == "t" || small == "trace";
}

std::optional<double> cell_number(std::string_view cell, char decimal) {
  if (cell.size() > 1 && cell.front() == '+' && cell[1] != '-') {
    cell.remove_prefix(1);
  }
  const auto value = units::parse_number(cell, decimal);
  return value ? std::optional(*value) : std::nullopt;
}

} // namespace baize::weather_files
