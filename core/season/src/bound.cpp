#include "bound.h"

#include "baize/season/bounded_score.h"
#include "baize/stats/distributions.h"
#include "weigh.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace baize::season {
namespace {

constexpr double kSpread = 0.25; ///< points: how far a look may lie from those around it
constexpr int kRounds = 8;
constexpr std::ptrdiff_t kAround = 4; ///< looks on either side
constexpr double kFewestRolls = 1e-3; ///< what a run tells at least, in rolls

double log_cdf(double z) {
  return std::log(std::max(stats::normal_cdf(z), 1e-300));
}

/// Of the level, on a grid; the greatest is put to 0 before it is raised.
double log_likelihood(const RunMean& run, double level, double sd) {
  const double inner = run.scored - run.at_ten - run.at_one;
  const double whole = unrounded(sd);
  double log = run.at_ten * log_cdf((level - kInsideTop) / whole) +
               run.at_one * log_cdf((kInsideBottom - level) / whole);
  if (inner > 0) {
    const double mean = (run.scored * run.score - kTop * run.at_ten - kBottom * run.at_one) / inner;
    const double off = (mean - level) / sd;
    log -= inner * off * off / 2;
  }
  return log;
}

bool same_losses(const GreenModel& green, std::size_t a, std::size_t b) {
  for (Eigen::Index k = 0; k < green.growth.cols(); ++k) {
    const auto row = [&](std::size_t i) { return green.growth(static_cast<Eigen::Index>(i), k); };
    if ((row(a) < 0) != (row(b) < 0)) {
      return false;
    }
  }
  return true;
}

double mean_around(const GreenModel& green, std::size_t place) {
  const auto count = static_cast<std::ptrdiff_t>(green.looks.size());
  const auto at = static_cast<std::ptrdiff_t>(place);
  double rolls = 0;
  double total = 0;
  for (auto i = std::max<std::ptrdiff_t>(at - kAround, 0); i < std::min(at + kAround + 1, count);
       ++i) {
    const Look& look = green.looks[static_cast<std::size_t>(i)];
    if (same_losses(green, place, static_cast<std::size_t>(i))) {
      rolls += look.rolls;
      total += look.rolls * look.mean;
    }
  }
  return total / rolls;
}

bool at_bound(const RunMean& run) {
  return run.at_ten + run.at_one > 0;
}

} // namespace

Told told_by(const RunMean& run, double sd, double near, double spread) {
  if (!at_bound(run)) {
    return {run.score, run.scored};
  }
  constexpr int kSteps = 400;
  constexpr double kWide = 8; ///< of the belief, either side
  const double step = 2 * kWide * spread / kSteps;
  std::vector<double> logs;
  double greatest = -HUGE_VAL;
  for (int i = 0; i <= kSteps; ++i) {
    const double off = (i * step - kWide * spread) / spread;
    logs.push_back(log_likelihood(run, near + off * spread, sd) - off * off / 2);
    greatest = std::max(greatest, logs.back());
  }
  double mass = 0;
  double first = 0;
  double second = 0;
  for (int i = 0; i <= kSteps; ++i) {
    const double off = i * step - kWide * spread;
    const double weight = std::exp(logs[static_cast<std::size_t>(i)] - greatest);
    mass += weight;
    first += weight * off;
    second += weight * off * off;
  }
  const double mean = first / mass;
  const double variance = second / mass - mean * mean;
  // What was believed is taken out again. The likelihood is log-concave, so that
  // the variance has become smaller.
  const double precision = 1 / variance - 1 / (spread * spread);
  const double rolls = precision * sd * sd;
  if (!(rolls > kFewestRolls)) {
    return {near, kFewestRolls};
  }
  return {near + mean / variance / precision, rolls};
}

void open_bounds(GreenModel& green, double roll_sd) {
  if (std::none_of(green.runs.begin(), green.runs.end(), at_bound)) {
    return;
  }
  for (int round = 0; round < kRounds; ++round) {
    std::vector<double> near;
    for (std::size_t i = 0; i < green.looks.size(); ++i) {
      near.push_back(mean_around(green, i));
    }
    for (RunMean& run : green.runs) {
      const Told told = told_by(run, roll_sd, near[run.look], kSpread);
      run.mean = told.mean;
      run.rolls = told.rolls;
    }
    weigh(green);
  }
}

} // namespace baize::season
