#pragma once

#include "baize/season/project.h"
#include "draw_losses.h"

namespace baize::season {

/// Median and 95 % interval of days, some of which are not known by the end.
Return return_of(std::vector<std::optional<int>> days, int followed);

/// Collects, draw by draw, what each loss of a green did.
class WorkDraws {
 public:
  WorkDraws(const SeasonFit& fit, std::size_t place, const LossDays& losses,
            const std::vector<double>& standards);
  void add(const Draw& draw, const std::vector<double>& level, const DrawnLosses& lost);
  std::vector<WorkEstimate> estimates() const;

 private:
  struct One {
    std::vector<double> depth;
    std::vector<double> rate;
    std::vector<double> half_life;
    std::vector<double> score_days;
    std::vector<double> growth_days_back;
    std::vector<std::optional<int>> within_tolerance;
    std::vector<std::optional<int>> at_standard;
    std::size_t surface = 0; ///< of this one, in surfaces_
    Eigen::VectorXd growth;  ///< growth-days since it, from its own day on
  };
  /// The place in surfaces_ of one that has these shares.
  std::size_t surface_of(const Eigen::VectorXd& shares);
  void add_one(std::size_t j, const Draw& draw, const std::vector<double>& level,
               const Eigen::VectorXd& lost);
  int followed(std::size_t j) const;

  const SeasonFit& fit_;
  std::size_t place_;
  const LossDays& losses_;
  const std::vector<double>& standards_;
  std::vector<One> all_;
  std::vector<Eigen::VectorXd> surfaces_; ///< the whole green, halves: shares of every loss
};

} // namespace baize::season
