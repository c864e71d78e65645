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

/// Up to a constant, as a function of the level.
class LogLikelihood {
 public:
  LogLikelihood(const RunMean& run, double sd) : run_(run), sd_(sd), whole_(unrounded(sd)) {
    inner_ = run.scored - run.at_ten - run.at_one;
    const double inner_sum = run.scored * run.score - kTop * run.at_ten - kBottom * run.at_one;
    mean_ = inner_ > 0 ? inner_sum / inner_ : 0;
  }
  double at(double level) const {
    const double off = (mean_ - level) / sd_;
    double log = -inner_ * off * off / 2;
    if (run_.at_ten > 0) {
      log += run_.at_ten * log_cdf((level - kInsideTop) / whole_);
    }
    if (run_.at_one > 0) {
      log += run_.at_one * log_cdf((kInsideBottom - level) / whole_);
    }
    return log;
  }

 private:
  const RunMean& run_;
  double sd_;
  double whole_; ///< of rolls before they are rounded
  double inner_; ///< rolls that are at no bound, and their mean
  double mean_;
};

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

/// Of the trapezoid rule over `wide` spreads of the belief on either side: two a
/// standard deviation of the narrowest that the belief can become. The rule's error for
/// a normal curve then falls as exp(-2 pi^2 2^2): beyond rounding.
int enough_steps(double wide, double rolls, double spread_in_sds) {
  const double narrowest = 1 / std::sqrt(1 + rolls * spread_in_sds * spread_in_sds);
  return static_cast<int>(std::ceil(2 * wide * 2 / narrowest));
}

bool at_bound(const RunMean& run) {
  return run.at_ten + run.at_one > 0;
}

} // namespace

Told told_by(const RunMean& run, double sd, double near, double spread) {
  if (!at_bound(run)) {
    return {run.score, run.scored};
  }
  constexpr double kWide = 8; ///< spreads of the belief, either side
  const LogLikelihood likelihood(run, sd);
  const int steps = enough_steps(kWide, run.scored, spread / unrounded(sd));
  const auto place = [=](int i) { return kWide * (2.0 * i / steps - 1); };
  std::vector<double> logs;
  for (int i = 0; i <= steps; ++i) {
    const double off = place(i);
    logs.push_back(likelihood.at(near + off * spread) - off * off / 2);
  }
  const double greatest = *std::max_element(logs.begin(), logs.end());
  double mass = 0;
  double first = 0;
  double second = 0;
  for (int i = 0; i <= steps; ++i) {
    const double off = place(i) * spread;
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
    std::vector<double> near(green.looks.size());
    for (std::size_t i = 0; i < near.size(); ++i) {
      near[i] = mean_around(green, i);
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
