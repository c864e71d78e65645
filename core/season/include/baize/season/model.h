#pragma once

#include "baize/green/club.h"
#include "baize/season/growth_curve.h"
#include "baize/season/priors.h"
#include "baize/stats/summary.h"

#include <Eigen/Core>

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace baize::season {

struct Options {
  Clock clock = Clock::growth_days;
  Priors priors;
  /// Name by which works are pooled, by work id; the kind where there is none.
  std::map<std::string, std::string> methods;
  /// Play is taken to begin at `play_from` and to have done its whole effect after
  /// `play_hours`. 0 to 1439 minutes; above 0, to 24 hours.
  int play_from_minute = 9 * 60;
  double play_hours = 8;
  /// A loss no greater than this is over, in points. Above 0, to 2.
  double tolerance = 0.3;
  /// Draws behind every interval, 50 to 20000, and their seed.
  int draws = 400;
  std::uint64_t seed = 1;
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// The disruptive works of one day on one surface, which only together can be
/// told from the level.
struct Loss {
  std::vector<std::string> works; ///< ids
  std::string label;              ///< methods of its works, joined by " + "
  std::size_t method = 0;         ///< place in Model::methods
  units::Day day;
  units::Day last; ///< last day of the work; it is full until then
  std::string half;
};

/// One visit, its runs put together: mean of n scored rolls by run.
struct Look {
  units::Day day;
  std::string visit;
  std::size_t observer = 0;
  double played = 0; ///< share of a day's play before it, 0 to 1
  double rolls = 0;
  double mean = 0; ///< of all its rolls
};

/// One direction at one spot during one visit. A roll scored 10 may have been
/// better than that, one scored 1 worse: where there are such, `mean` and `rolls`
/// say what the run tells of a level without bounds.
struct RunMean {
  std::size_t look = 0;
  std::size_t line = 0;
  double mean = 0;
  double rolls = 0;
  double score = 0;  ///< mean as written down
  double scored = 0; ///< rolls as written down
  int at_ten = 0;    ///< of them
  int at_one = 0;
};

/// One row a look.
using Rows = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

/// Losses that some visit saw on part of its rolls only, and of their sums of products
/// within looks what depends on no rate: one column a look, to be weighted with what is
/// left of the losses by then.
struct SplitLosses {
  std::vector<Eigen::Index> losses;            ///< places in GreenModel::losses
  std::vector<Eigen::MatrixXd> with_lines;     ///< of each, with lines and value: one row each
  std::vector<Eigen::RowVectorXd> with_losses; ///< with itself and those before it, pair by pair
};

/// A green's records as the model reads them. Matrices have one row a look (or a
/// run) and one column a loss.
struct GreenModel {
  std::string green;
  std::vector<std::string> halves;
  std::size_t curve = 0;          ///< place in Model::curves
  std::vector<std::string> lines; ///< "A out", "A back" ...
  std::vector<Loss> losses;
  std::vector<Look> looks; ///< by day and time
  std::vector<RunMean> runs;
  Eigen::MatrixXd growth;     ///< looks: growth-days since each loss, -1 before; never falls
  Eigen::MatrixXd share;      ///< looks: share of its rolls that a loss touched, 0 to 1
  Eigen::MatrixXd run_share;  ///< runs: the same of a run
  Eigen::MatrixXd line_share; ///< looks: share of its rolls on each line
  Rows fixed;                 ///< looks: columns that depend on no parameter, see fixed_columns
  Eigen::MatrixXd within;     ///< sums of squares and products of lines and values within looks
  double log_rolls = 0;       ///< log-determinant that within-look differences add, noise 1
  SplitLosses split;          ///< losses that differ within looks
};

/// A whole club's records as the model reads them.
struct Model {
  stats::Summary summary; ///< not usable: refused, and why
  std::vector<GreenModel> greens;
  std::vector<std::string> observers;
  std::vector<std::string> methods;
  std::vector<GrowthCurve> curves;
  double roll_sd = 0;    ///< of one scored roll about its run
  int roll_sd_rolls = 0; ///< rolls that told it; 0: assumed
  units::Day record_end;
  Clock clock = Clock::growth_days;
  std::vector<std::string> notes;
};

/// Reads the records up to `record_end`: visits and disruptive works; works after
/// it are plans and left out. A visit on a work's own day counts only where both
/// carry a time. Greens with fewer than three visited days are left out with a
/// note. Where more than half of the days have no temperature the losses run on
/// calendar days, with a note.
/// Refuses what Options::problem says; "too_few_visits" (10 in all), and
/// "all_scores_equal".
Model read_model(const green::Records& records, const climate::Weather& weather,
                 units::Day record_end, const Options& options = {});

/// Lines, level at the first look, observers (as contrasts), play, and the value
/// itself: one row a look.
Rows fixed_columns(const GreenModel& green, std::size_t observers);

/// How much of a loss on `loss_half` a run or level of `half` sees: 1, 0, or for the
/// whole green its share of halves.
double half_share(const GreenModel& green, const std::string& loss_half, const std::string& half);

} // namespace baize::season
