#pragma once

#include "baize/stats/summary.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::stats {

/// A treatment's levels, or the units of a stratum, plot by plot.
struct Grouping {
  std::string name;
  std::vector<int> level; ///< one for each plot; any whole numbers
};
/// The pairs of levels that occur, named "a:b" and numbered from 0 in order: whole
/// plots 1 to 3 in each block are nested(block, whole_plot).
Grouping nested(const Grouping& outer, const Grouping& inner);

/// A trial laid out by design.
///
/// Strata are the units that were randomised, from the largest to the smallest:
/// none for a completely randomised trial; blocks for randomised complete blocks;
/// blocks and whole plots for a split plot; blocks, strips one way and strips the
/// other for a strip plot; rows and columns for a latin square; blocks and plots
/// where each plot is measured several times. Units of one name in different blocks
/// need different levels. The single values, "plots", come last by themselves.
struct DesignedTrial {
  std::vector<std::optional<double>> y; ///< absent: the plot was lost
  std::vector<Grouping> treatments;     ///< 1 to 6; fixed; each combination occurs
  std::vector<Grouping> strata;         ///< 0 to 6
};

struct TrialOptions {
  int highest_order = 6; ///< interactions of up to so many treatments; 1 to 6, 1: none
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

struct TrialTerm {
  std::string name;                 ///< "method" or "method:nitrogen"
  std::vector<std::size_t> factors; ///< places in `treatments`, ascending
  int df = 0;
  double ss = 0; ///< with lost plots: what the residual grows by without the term
  double ms = 0;
  std::optional<double> f; ///< absent where the stratum has no residual left
  std::optional<double> p;
};

struct TrialStratum {
  std::string name;
  std::vector<TrialTerm> terms; ///< estimated within this stratum
  int residual_df = 0;          ///< `lost` already taken off
  double residual_ss = 0;
  double residual_ms = 0;   ///< 0 where residual_df is 0
  std::optional<double> cv; ///< coefficient of variation: root of residual_ms over the mean;
                            ///< absent where the mean is not above 0
  int lost = 0;             ///< degrees of freedom that filling lost plots cost
};

struct TrialAnova {
  Summary summary;
  std::vector<TrialStratum> strata; ///< as given, and "plots"
  std::vector<double> y;            ///< as given, lost plots filled
  int lost = 0;                     ///< plots without a value
  double mean = 0;                  ///< of y
};

/// Analysis of variance with a table for each error stratum: every treatment and
/// interaction is tested against the residual of the units it was randomised to.
///
/// The layout must be balanced in the wide sense: any two groupings are orthogonal
/// (counts are proportional), so that projections on treatments and strata are
/// sweeps of means, worked in long double, and the order of terms does not matter.
/// Nelder JA (1965) Proc. R. Soc. A 283:147-178; Wilkinson GN (1970) Biometrika
/// 57:19-46.
///
/// A lost plot takes the value that leaves the smallest residual in the lowest
/// stratum that can tell; that stratum loses its degree of freedom. A term's sum of
/// squares is what the residual grows by when the term is left out and the lost
/// plots are filled anew, which is free of the upward bias of the filled table
/// (exact in the lowest stratum). Yates F (1933) Empire J. Exp. Agric. 1:129-142;
/// Anderson RL (1946) Biometrics Bull. 2:41-47.
///
/// Refuses "option_out_of_range", "too_few" (2 plots, 1 treatment, 2 levels),
/// "too_many", "lengths_differ", "not_finite", "combination_missing",
/// "not_balanced", "term_split" (partly confounded), "stratum_without_units",
/// "cannot_fill" (the lost plots are all that tell of something); degenerate
/// "no_residual" (no error to test against), "no_spread".
TrialAnova trial_anova(const DesignedTrial& trial, const TrialOptions& options = {});

} // namespace baize::stats
