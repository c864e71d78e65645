#pragma once

#include "baize/stats/interval.h"
#include "baize/stats/summary.h"
#include "baize/trials/plan.h"

namespace baize::trials {

/// How much values differ where nothing was done to the plots: standard deviations,
/// in the unit of the value.
struct Spread {
  double whole_plot = 0.3; ///< between whole plots or strips of a block
  double plot = 0.4;       ///< between plots that lie together
  double visit = 0.5;      ///< of one plot's value from visit to visit
};

struct PowerOptions {
  Spread spread;       ///< each 0 or more, not all 0
  int visits = 6;      ///< after the treatment, averaged; 1 to 1000
  double alpha = 0.05; ///< of each comparison; above 0, below 1
  double power = 0.8;  ///< wanted; above alpha, below 1
  int repeats = 2000;  ///< simulated trials; 100 to 100000
  std::uint64_t seed = 1;
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct PowerPoint {
  double difference = 0;
  double power = 0;         ///< share of simulated trials that found it
  stats::Interval interval; ///< of the simulation itself, 95 % (Wilson)
};

/// What two means of one table must lie apart to be found.
struct TablePower {
  std::string of; ///< "treatment" or "second treatment"
  int error_df = 0;
  double detectable = 0;         ///< found in a share `power` of the simulated trials
  std::vector<PowerPoint> curve; ///< at quarters of `detectable`, up to twice
};

struct TrialPower {
  stats::Summary summary;
  std::vector<TablePower> tables;
  /// The treatments' detectable difference with other numbers of blocks.
  struct Blocks {
    int blocks = 0;
    double detectable = 0;
  };
  std::vector<Blocks> other_blocks;
};

/// What a trial of this layout could find, by simulation: values of every plot are
/// drawn as whole plot + plot + mean of the visits, analysed in the strata of the
/// layout, and two means compared by t (least significant difference). Blocks drop
/// out of every comparison. The same draws serve every difference, so that the curve
/// cannot wobble. Same options, same bytes. Where plots have one error this agrees
/// with the noncentral t (Cohen J (1992) Psychol. Bull. 112:155-159, table 2).
/// layout with its numbers of treatments (2 or more), second treatments (2 or more
/// where the layout has them) and blocks (2 to 1000). Refuses "option_out_of_range".
struct TrialShape {
  Layout layout = Layout::randomised_blocks;
  int treatments = 2;
  int seconds = 1;
  int blocks = 4;
};
TrialPower simulate_power(const TrialShape& shape, const PowerOptions& options = {});
TrialShape shape_of(const Plan& plan);

} // namespace baize::trials
