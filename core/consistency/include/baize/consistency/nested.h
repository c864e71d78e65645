#pragma once

#include "baize/stats/summary.h"

#include <limits>
#include <string>
#include <vector>

namespace baize::consistency {

/// A value with the groups it lies in, outermost first: green, visit, spot ...
/// Names need to differ within their own group only.
struct NestedValue {
  std::vector<std::string> path;
  double value = 0;
};

struct NestedLevel {
  std::string name;
  int groups = 0;
  int df = 0;
  double ms = 0;       ///< mean square
  double variance = 0; ///< component, never below 0
  double share = 0;    ///< of the sum of all components
};

/// Components of variance of groups within groups; the last level is the value's
/// own, within the innermost group.
struct Nested {
  int values = 0;
  double mean = std::numeric_limits<double>::quiet_NaN();
  std::vector<NestedLevel> levels;
  stats::Summary summary;
};

/// Analysis of variance with sizes as they are: each mean square is set equal to its
/// expectation, from the innermost level outwards. A component that comes out below
/// 0 is shown as 0. `names` holds the levels' names, with that of the single value
/// last. Refuses "lengths_differ" (a path of another length), "not_finite", "too_few"
/// (no two groups, or no two values in a group, at some level); degenerate "all_equal".
/// Source: Searle, Casella and McCulloch (1992) Variance Components, ch. 5; Gates and
/// Shiue (1962) Biometrics 18:529-536.
Nested nested_components(const std::vector<NestedValue>& values,
                         const std::vector<std::string>& names);

} // namespace baize::consistency
