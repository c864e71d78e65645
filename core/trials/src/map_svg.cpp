#include "baize/trials/map.h"
#include "grid.h"

#include <algorithm>
#include <array>

namespace baize::trials {
namespace {

constexpr int kCellWide = 112;
constexpr int kCellHigh = 68;
constexpr int kTitle = 26;
constexpr int kGap = 18;
constexpr int kMostWide = 760;

/// Light tints that stay apart in grey as far as eight can; the names tell.
constexpr std::array<const char*, 8> kTints{"#cfe8cf", "#f6e3b4", "#cfdff5", "#f3d0c7",
                                            "#e6d9f2", "#d9d9d9", "#bfe3e0", "#f7f3c8"};

std::string number(int value) {
  return std::to_string(value);
}

std::string text_at(int x, int y, int size, const char* extra, const std::string& text) {
  return "<text x=\"" + number(x) + "\" y=\"" + number(y) + "\" font-size=\"" + number(size) +
         "\"" + extra + ">" + escaped(text) + "</text>\n";
}

/// A size at which the text fits the cell: a letter is about 0.58 of its size wide.
int size_for(const std::string& text) {
  const int room = (kCellWide - 14) * 100 / 58;
  return std::clamp(room / std::max(1, static_cast<int>(text.size())), 6, 15);
}

std::string ground_of(int x, int y, const char* tint) {
  return "<rect x=\"" + number(x) + "\" y=\"" + number(y) + "\" width=\"" + number(kCellWide) +
         "\" height=\"" + number(kCellHigh) + "\" fill=\"" + tint + "\" stroke=\"#444\"/>\n";
}

std::string words_of(const Plot& plot, int x, int y) {
  std::string cell = text_at(x + 7, y + 17, 12, "", number(plot.number));
  cell += text_at(x + kCellWide - 7, y + 17, 11, " text-anchor=\"end\" fill=\"#444\"",
                  plot.walk > 0 ? "walk " + number(plot.walk) : "");
  cell += text_at(x + 7, y + 38, size_for(plot.treatment), " font-weight=\"700\"", plot.treatment);
  const std::string low =
      plot.second.empty() ? (plot.half.empty() ? "" : plot.half + " half") : plot.second;
  return cell + (low.empty() ? "" : text_at(x + 7, y + 57, std::min(13, size_for(low)), "", low));
}

/// Lines from plot to plot in the order of the walk, drawn before the words, which lie over them.
std::string path_of(const BlockGrid& grid, int x, int y) {
  auto cells = grid.cells;
  std::sort(cells.begin(), cells.end(),
            [](const auto& a, const auto& b) { return a.plot->walk < b.plot->walk; });
  std::string points;
  for (const auto& cell : cells) {
    points += number(x + cell.column * kCellWide + kCellWide / 2) + "," +
              number(y + cell.row * kCellHigh + kCellHigh - 7) + " ";
  }
  return "<polyline points=\"" + points +
         "\" fill=\"none\" stroke=\"#8a8a8a\" stroke-dasharray=\"2 4\"/>\n";
}

std::string block_of(const BlockGrid& grid, int x, int y, const std::vector<std::string>& names) {
  std::string block = text_at(x, y + 17, 15, " font-weight=\"700\"", grid.title);
  for (const auto& cell : grid.cells) {
    const auto at = static_cast<std::size_t>(
        std::find(names.begin(), names.end(), cell.plot->treatment) - names.begin());
    block += ground_of(x + cell.column * kCellWide, y + kTitle + cell.row * kCellHigh,
                       kTints.at(at % kTints.size()));
  }
  block += path_of(grid, x, y + kTitle);
  for (const auto& cell : grid.cells) {
    block += words_of(*cell.plot, x + cell.column * kCellWide, y + kTitle + cell.row * kCellHigh);
  }
  return block;
}

} // namespace

std::string escaped(const std::string& text) {
  std::string safe;
  for (const char c : text) {
    switch (c) {
    case '&':
      safe += "&amp;";
      break;
    case '<':
      safe += "&lt;";
      break;
    case '>':
      safe += "&gt;";
      break;
    case '"':
      safe += "&quot;";
      break;
    default:
      safe += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
    }
  }
  return safe;
}

std::string map_svg(const Plan& plan) {
  const auto names = treatments(plan);
  std::string body;
  int x = 0;
  int y = 0;
  int line = 0; // height of the blocks beside each other
  int wide = 0;
  for (const BlockGrid& grid : grids(plan)) {
    const int block_wide = grid.columns * kCellWide;
    if (x > 0 && x + block_wide > kMostWide) {
      x = 0;
      y += line + kGap;
      line = 0;
    }
    body += block_of(grid, x + 1, y, names);
    line = std::max(line, kTitle + grid.rows * kCellHigh);
    wide = std::max(wide, x + block_wide);
    x += block_wide + kGap;
  }
  const std::string size = number(wide + 2) + " " + number(y + line + 2);
  return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + size + "\" width=\"" +
         number(wide + 2) + "\" height=\"" + number(y + line + 2) +
         "\" font-family=\"sans-serif\" fill=\"#111\">\n<title>" + escaped(plan.trial) +
         "</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n" + body + "</svg>\n";
}

} // namespace baize::trials
