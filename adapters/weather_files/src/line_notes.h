#pragma once

#include "baize/units/problem.h"

#include <string>
#include <string_view>
#include <vector>

namespace baize::weather_files {

/// Remarks by line. Neighbouring lines with the same complaint become one
/// ("line 12 to 19"), and past the first thousand they are only counted, so that
/// a file of nonsense cannot fill the memory.
class LineNotes {
 public:
  void add(int line, const char* code, std::string_view field, std::string_view value,
           std::string_view rule);
  std::vector<units::Problem> take();

 private:
  struct Run {
    int first;
    int last;
    units::Problem problem;
  };
  std::vector<Run> runs_;
  int more_ = 0;
};

} // namespace baize::weather_files
