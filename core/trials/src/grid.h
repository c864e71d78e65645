#pragma once

#include "baize/trials/plan.h"

#include <string>
#include <vector>

namespace baize::trials {

/// One block as it lies; a plan without places gets one row in the plan's order.
struct BlockGrid {
  std::string title; ///< "Block 1, green 3"
  int rows = 0;
  int columns = 0;
  struct Cell {
    const Plot* plot = nullptr;
    int row = 0; ///< from 0
    int column = 0;
  };
  std::vector<Cell> cells;
};
std::vector<BlockGrid> grids(const Plan& plan);

/// "coring / sand" or "coring".
std::string treatment_name(const std::string& first, const std::string& second);
std::string treatment_name(const Plot& plot);

} // namespace baize::trials
