#include "grid.h"

#include <algorithm>

namespace baize::trials {
namespace {

std::string title_of(const Plan& plan, int block, const std::string& green) {
  std::string title = plan.has_blocks() ? "Block " + std::to_string(block) : plan.trial;
  return green.empty() ? title : title + ", green " + green;
}

} // namespace

std::vector<BlockGrid> grids(const Plan& plan) {
  std::vector<BlockGrid> all;
  for (const int block : blocks(plan)) {
    BlockGrid grid;
    std::string green;
    bool placed = true;
    for (const Plot& plot : plan.plots) {
      if (plot.block == block) {
        placed = placed && plot.row > 0 && plot.column > 0;
        grid.cells.push_back({&plot, plot.row - 1, plot.column - 1});
        // One name only where the whole block lies on that green.
        green = grid.cells.size() == 1 || green == plot.green ? plot.green : "";
      }
    }
    int at = 0;
    for (auto& cell : grid.cells) {
      cell.row = placed ? cell.row : 0;
      cell.column = placed ? cell.column : at++;
      grid.rows = std::max(grid.rows, cell.row + 1);
      grid.columns = std::max(grid.columns, cell.column + 1);
    }
    grid.title = title_of(plan, block, green);
    all.push_back(std::move(grid));
  }
  return all;
}

std::string treatment_name(const std::string& first, const std::string& second) {
  return second.empty() ? first : first + " / " + second;
}

std::string treatment_name(const Plot& plot) {
  return treatment_name(plot.treatment, plot.second);
}

} // namespace baize::trials
