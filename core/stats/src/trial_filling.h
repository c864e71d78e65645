#pragma once

#include "trial_layout.h"

namespace baize::stats::detail {

/// How lost plots are filled: each value is a weighted sum of the others.
struct Filling {
  std::vector<std::size_t> lost; ///< plots
  std::vector<Column> weights;   ///< for each lost plot, of all plots; 0 at lost ones
  std::vector<int> degrees;      ///< lost to each stratum
  bool determined = true;        ///< false: nothing tells what some plot would have had
};

/// Values that leave the smallest residual in the lowest stratum; where that does
/// not tell (all plots of one larger unit are lost), in the next above.
/// `without`: a term left out of its stratum.
Filling filling(const Layout& layout, const std::vector<std::size_t>& lost,
                std::size_t without = kNoTerm);

std::vector<std::size_t> lost_plots(const DesignedTrial& trial);
/// The values, 0 where a plot is lost.
Column given(const DesignedTrial& trial);
units::Problem cannot_fill(const std::vector<std::size_t>& lost);

/// `y` with its lost plots filled; what stands there before is not looked at.
Column filled(const Filling& filling, Column y);

} // namespace baize::stats::detail
