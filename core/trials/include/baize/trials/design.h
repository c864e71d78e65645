#pragma once

#include "baize/trials/plan.h"

namespace baize::trials {

/// What is to be tried, and where.
struct Design {
  std::string trial; ///< its name, 1 to 80 bytes
  Layout layout = Layout::randomised_blocks;
  std::vector<std::string> treatments; ///< 2 to 60 names, each once
  std::vector<std::string> seconds;    ///< 2 to 60 for split and strip plots, else none
  std::string control;                 ///< empty, or one of the treatments
  int blocks = 4;                      ///< 2 to 40; replicates where there are no blocks
  /// Greens that blocks lie on, in the order of the walk: as many as blocks, or
  /// fewer where they divide them. Empty: one unnamed place.
  std::vector<std::string> greens;
  /// Names of a green's two halves: then the plots (of a split plot: the whole
  /// plots) are the halves. Asks for two treatments and a green for each block.
  std::vector<std::string> halves;
  int across = 0; ///< plots in a row of a block; 0: up to four, or two rows
  std::uint64_t seed = 1;

  /// "option_out_of_range", "name_twice", "name_missing", "no_such_control",
  /// "greens_uneven", "halves_do_not_fit", "no_second", "second_not_wanted".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// A random layout. Treatments are shuffled anew in every block (whole plots and
/// the plots within each; strips each way), by stats::Random, so that the same
/// design with the same seed gives the same plan everywhere. Fisher RA (1935) The
/// Design of Experiments. Plots are numbered 101, 102 ... in block 1, 201 ... in
/// block 2, row by row. Refuses what `problem` says.
units::Result<Plan> lay_out(const Design& design);

} // namespace baize::trials
