#pragma once

#include <string>
#include <vector>

namespace baize::golden {

/// One number of the season model of the demo club.
struct Line {
  std::string what; ///< "depth", "level" ...
  std::string of;   ///< a method, an observer, a green
  std::string when; ///< a day or a year, or empty
  double value = 0;
  double standard_error = 0; ///< 0: none
};

/// Fitted anew: methods, observers, spreads, and greens' levels and true days.
std::vector<Line> season_estimates();

std::string write(const std::vector<Line>& lines);
/// Empty where a line is not as `write` makes it.
std::vector<Line> read(const std::string& text);

} // namespace baize::golden
