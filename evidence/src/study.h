#pragma once

#include "baize/stats/interval.h"

#include <string>
#include <vector>

namespace baize::evidence {

/// One table of a page; every row has as many cells as `header`.
struct Table {
  std::string title;
  std::vector<std::string> header;
  std::vector<std::vector<std::string>> rows;
};

/// One page of docs/evidence.
struct Study {
  std::string name; ///< of the file
  std::string title;
  std::string question; ///< one paragraph: what is asked, and how the worlds were drawn
  std::vector<Table> tables;
  std::vector<std::string> findings; ///< sentences beneath the tables
};
std::string markdown(const Study& study, int worlds);

/// How often intervals of nominal 95 % hold the truth.
class Coverage {
 public:
  void add(double truth, double estimate, stats::Interval interval);
  void refuse() { ++refused_; } ///< the method said it cannot tell

  static std::vector<std::string> header(const std::string& first,
                                         const std::string& counted = "worlds");
  /// name, intervals answered, share covered with the Wilson interval of that share,
  /// truth below, truth above, bias and mean width of the interval, refused.
  std::vector<std::string> row(const std::string& name) const;

 private:
  int worlds_ = 0;
  int covered_ = 0;
  int truth_below_ = 0;
  int truth_above_ = 0;
  int refused_ = 0;
  double error_ = 0;
  double width_ = 0;
};

/// How often something was said.
class Rate {
 public:
  void add(bool said) {
    ++worlds_;
    said_ += said ? 1 : 0;
  }
  static std::vector<std::string> header(const std::string& first, const std::string& what);
  std::vector<std::string> row(const std::string& name) const;

 private:
  int worlds_ = 0;
  int said_ = 0;
};

} // namespace baize::evidence
