#include "baize/trials/map.h"
#include "grid.h"

#include <algorithm>

namespace baize::trials {
namespace {

/// Characters, not bytes: a continuation byte of UTF-8 takes no room.
std::size_t width(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
  }));
}

std::string padded(std::string text, std::size_t to) {
  text.append(to - std::min(to, width(text)), ' ');
  return text;
}

struct Lines {
  std::string number;
  std::string treatment;
  std::string half;
};

Lines lines_of(const Plot& plot) {
  return {std::to_string(plot.number) + "  (walk " + std::to_string(plot.walk) + ")",
          treatment_name(plot), plot.half.empty() ? "" : plot.half + " half"};
}

} // namespace

std::string map_text(const Plan& plan) {
  std::size_t wide = 0;
  bool halves = false;
  for (const Plot& plot : plan.plots) {
    const Lines lines = lines_of(plot);
    wide = std::max({wide, width(lines.number), width(lines.treatment), width(lines.half)});
    halves = halves || !lines.half.empty();
  }
  std::string map;
  for (const BlockGrid& grid : grids(plan)) {
    map += (map.empty() ? "" : "\n") + grid.title + "\n";
    for (int row = 0; row < grid.rows; ++row) {
      std::vector<Lines> cells(static_cast<std::size_t>(grid.columns));
      for (const auto& cell : grid.cells) {
        if (cell.row == row) {
          cells[static_cast<std::size_t>(cell.column)] = lines_of(*cell.plot);
        }
      }
      std::string edge;
      for (std::size_t i = 0; i < cells.size(); ++i) {
        edge += "+" + std::string(wide + 2, '-');
      }
      map += edge + "+\n";
      const auto print = [&](std::string Lines::* line) {
        for (const Lines& cell : cells) {
          map += "| " + padded(cell.*line, wide) + " ";
        }
        map += "|\n";
      };
      print(&Lines::number);
      print(&Lines::treatment);
      if (halves) {
        print(&Lines::half);
      }
      map += row + 1 == grid.rows ? edge + "+\n" : "";
    }
  }
  return map;
}

} // namespace baize::trials
