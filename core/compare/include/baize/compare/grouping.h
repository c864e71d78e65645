#pragma once

#include "baize/green/kinds.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::compare {

/// What counts as one method: the kind of work, parted further where asked.
struct Grouping {
  std::string kind = {}; ///< only works of this kind; empty: of any
  std::string by = {};   ///< a parameter that parts the works of a kind; empty: none
  std::vector<double> cuts =
      {}; ///< bands of a number, each from its cut; empty: each value by itself
  std::vector<std::string> alongside = {}; ///< kinds of work that part by being done with it or not
  int alongside_before_days = 1;           ///< how long before and after counts as with it, 0 to 60
  int alongside_after_days = 3;
  /// "unknown_kind", "not_a_parameter", "cuts_out_of_order", "alongside_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// "coring", "coring, tine diameter 8 mm", "coring, tine diameter under 8 mm",
/// "topdressing, worked in not stated", "coring without brushing". `works`: all works
/// of the green, in which those alongside are looked for.
std::string method_of(const green::Work& work, const std::string& green,
                      const std::vector<green::Work>& works, const Grouping& grouping);

} // namespace baize::compare
