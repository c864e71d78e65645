#include "weigh.h"

#include "columns.h"

#include <cmath>

namespace baize::season {
namespace {

void put_means(GreenModel& green) {
  for (Look& look : green.looks) {
    look.rolls = 0;
    look.mean = 0;
  }
  for (const RunMean& run : green.runs) {
    green.looks[run.look].rolls += run.rolls;
    green.looks[run.look].mean += run.rolls * run.mean;
  }
  for (Look& look : green.looks) {
    look.mean /= look.rolls;
  }
}

void put_shares(GreenModel& green) {
  const auto looks = static_cast<Eigen::Index>(green.looks.size());
  green.share = Eigen::MatrixXd::Zero(looks, green.growth.cols());
  green.line_share = Eigen::MatrixXd::Zero(looks, static_cast<Eigen::Index>(green.lines.size()));
  for (std::size_t r = 0; r < green.runs.size(); ++r) {
    const RunMean& run = green.runs[r];
    const auto look = static_cast<Eigen::Index>(run.look);
    const double weight = run.rolls / green.looks[run.look].rolls;
    green.line_share(look, static_cast<Eigen::Index>(run.line)) += weight;
    green.share.row(look) += weight * green.run_share.row(static_cast<Eigen::Index>(r));
  }
}

/// What differs within looks.
void put_within(GreenModel& green) {
  green.split = split_losses(green);
  green.within = within_lines(green);
  green.log_rolls = 0;
  for (const RunMean& run : green.runs) {
    green.log_rolls -= std::log(run.rolls);
  }
  for (const Look& look : green.looks) {
    green.log_rolls += std::log(look.rolls);
  }
}

} // namespace

void weigh(GreenModel& green) {
  put_means(green);
  put_shares(green);
  put_within(green);
}

} // namespace baize::season
