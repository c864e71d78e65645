#pragma once

#include "baize/compare/comparison.h"

#include <map>

namespace baize::compare::detail {

/// Means of works' means with the works' spread pooled over methods.
class WorkMeans {
 public:
  using Value = std::optional<double> Look::*;
  /// Looks without the value are left out; `work` numbers the look's work.
  WorkMeans(const std::vector<const Look*>& looks, const std::vector<int>& work, Value value,
            double level);
  std::optional<Figure> of(const std::string& method) const;
  /// Second less first.
  std::optional<Figure> between(const std::string& first, const std::string& second) const;

 private:
  struct Mean {
    double value = 0;
    int works = 0;
  };
  Figure with_interval(double value, double per_work) const;

  std::map<std::string, Mean> methods_;
  double variance_ = 0;
  int df_ = 0;
  double reach_ = 0;
};

} // namespace baize::compare::detail
