#pragma once

#include "baize/units/problem.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace baize::sheets {

/// Where a sentence belongs: file, line (0: the file as a whole) and column.
struct Where {
  std::string file;
  int line = 0;
  std::string column;
};

/// "rolls.csv line 12 column score".
std::string shown(const Where& where);

/// Problems and remarks as they are found, counted by file. The first 1000 of
/// each are kept, so that a wrong column does not become a million sentences.
class Findings {
 public:
  static constexpr std::size_t kMost = 1000;

  void problem(units::Problem problem, const Where& where);
  void remark(units::Problem remark, const Where& where);

  int problems_of(std::string_view file) const;
  /// Are there still fewer problems than can be listed?
  bool listing() const { return problems_.size() < kMost; }
  bool good() const { return found_ == 0; }
  /// With a last sentence that says how many were left out.
  std::vector<units::Problem> problems() const;
  std::vector<units::Problem> remarks() const;

 private:
  std::vector<units::Problem> problems_;
  std::vector<units::Problem> remarks_;
  std::map<std::string, int, std::less<>> by_file_;
  std::size_t found_ = 0;
  std::size_t remarked_ = 0;
};

} // namespace baize::sheets
