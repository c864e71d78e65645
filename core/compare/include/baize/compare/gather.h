#pragma once

#include "baize/climate/weather.h"
#include "baize/compare/grouping.h"
#include "baize/compare/look.h"

#include <set>

namespace baize::compare {

struct GatherOptions {
  Grouping grouping;
  recovery::Definition definition = recovery::kHeadline;
  int growth_window_days = 14; ///< after the work, for its growth potential; 1 to 120
  /// What the grouping says, and "growth_window_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct Gathered {
  std::vector<Look> looks;
  std::set<std::string> plans; ///< ids of works that are still to come
  int not_looked_at = 0;       ///< greens of works without any visit after
  int no_score_before = 0;     ///< greens left out because own level was asked and none is known
};

/// Adds the looks at every disruptive work of one green. `share`: the records of the
/// green only. Growth by the green's grass. Works of one day on one surface make one
/// look, its method named after all of them. Nothing is refused; with options that are
/// not valid() nothing is added.
void gather(const green::Records& share, const climate::Weather& weather, units::Day record_end,
            const GatherOptions& options, Gathered& into);

} // namespace baize::compare
