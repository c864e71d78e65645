// Observers who judge the same balls: do the intervals of the measures of
// agreement hold what the measure is in the population?
#include "baize/stats/bland_altman.h"
#include "baize/stats/concordance.h"
#include "baize/stats/icc.h"
#include "baize/stats/kappa.h"
#include "baize/stats/random.h"
#include "studies.h"

#include <cmath>

namespace baize::evidence {
namespace {

constexpr double kItemSd = 1.0;  ///< how much balls differ, points
constexpr double kNoiseSd = 0.6; ///< one look at one ball

/// ICC(2,1) and ICC(3,1) of `items` balls and `observers` people whose bias has sd `bias`.
void icc_row(int worlds, int items, int observers, double bias, Table& table) {
  const double item = kItemSd * kItemSd;
  const double noise = kNoiseSd * kNoiseSd;
  const double random_truth = item / (item + bias * bias + noise);
  const double fixed_truth = item / (item + noise);
  Coverage random;
  Coverage fixed;
  for (int world = 0; world < worlds; ++world) {
    stats::Random chance(101, static_cast<std::uint64_t>(world));
    std::vector<double> above(static_cast<std::size_t>(observers));
    for (double& one : above) {
      one = bias * chance.normal();
    }
    stats::Ratings ratings(static_cast<std::size_t>(items));
    for (auto& row : ratings) {
      const double ball = kItemSd * chance.normal();
      for (const double one : above) {
        row.push_back(ball + one + kNoiseSd * chance.normal());
      }
    }
    const auto found = stats::intraclass_correlation(ratings);
    if (!found.summary.usable) {
      random.refuse();
      fixed.refuse();
      continue;
    }
    random.add(random_truth, found.random_single.value, found.random_single.interval);
    fixed.add(fixed_truth, found.fixed_single.value, found.fixed_single.interval);
  }
  const std::string who =
      std::to_string(items) + " balls, " + std::to_string(observers) + " observers";
  table.rows.push_back(random.row("ICC(2,1), " + who));
  table.rows.push_back(fixed.row("ICC(3,1), " + who));
}

void pair_rows(int worlds, int balls, Table& table) {
  const double bias = 0.2;
  const double sd = kNoiseSd * std::sqrt(2.0);
  // Both see the ball with noise; the second stands `bias` lower.
  const double item = kItemSd * kItemSd;
  const double all = item + kNoiseSd * kNoiseSd;
  const double lin = 2 * item / (2 * all + bias * bias);
  Coverage of_bias;
  Coverage upper;
  Coverage lins;
  for (int world = 0; world < worlds; ++world) {
    stats::Random chance(102, static_cast<std::uint64_t>(world));
    std::vector<double> first;
    std::vector<double> second;
    for (int i = 0; i < balls; ++i) {
      const double ball = kItemSd * chance.normal();
      first.push_back(ball + kNoiseSd * chance.normal());
      second.push_back(ball - bias + kNoiseSd * chance.normal());
    }
    const auto limits = stats::bland_altman(first, second);
    of_bias.add(bias, limits.bias, limits.bias_interval);
    upper.add(bias + 1.96 * sd, limits.limits.high, limits.upper_limit_interval);
    const auto agreed = stats::concordance(first, second);
    if (agreed.interval) {
      lins.add(lin, agreed.coefficient, *agreed.interval);
    } else {
      lins.refuse();
    }
  }
  const std::string who = ", " + std::to_string(balls) + " balls";
  table.rows.push_back(of_bias.row("bias" + who));
  table.rows.push_back(upper.row("upper limit of agreement" + who));
  table.rows.push_back(lins.row("Lin's concordance" + who));
}

/// Scores 5 to 9 drawn from a table of two observers whose chances are known.
void kappa_row(int worlds, int balls, Table& table) {
  const stats::Table chances{{4, 2, 1, 0, 0},
                             {2, 8, 4, 1, 0},
                             {1, 5, 20, 6, 1},
                             {0, 1, 6, 22, 4},
                             {0, 0, 1, 4, 7}}; // of 100
  const double truth = stats::cohen_kappa(chances, stats::KappaWeights::quadratic).value;
  Coverage kappa;
  for (int world = 0; world < worlds; ++world) {
    stats::Random chance(103, static_cast<std::uint64_t>(world));
    stats::Table counts(5, std::vector<double>(5, 0));
    for (int i = 0; i < balls; ++i) {
      double left = 100 * chance.uniform();
      std::size_t cell = 0;
      while (cell < 24 && left >= chances[cell / 5][cell % 5]) {
        left -= chances[cell / 5][cell % 5];
        ++cell;
      }
      counts[cell / 5][cell % 5] += 1;
    }
    const auto found = stats::cohen_kappa(counts, stats::KappaWeights::quadratic);
    if (found.summary.usable && found.interval) {
      kappa.add(truth, found.value, *found.interval);
    } else {
      kappa.refuse();
    }
  }
  table.rows.push_back(kappa.row("quadratic kappa, " + std::to_string(balls) + " balls"));
}

} // namespace

Study agreement(int worlds) {
  Study study{"agreement",
              "Measures of agreement",
              "Do the 95 % intervals hold the population's value? Balls differ by a standard "
              "deviation of 1 point, one look at one ball by 0.6; the observers' bias has a "
              "standard deviation of 0.3 (ICC), or the second stands 0.2 points lower (pairs). "
              "Kappa's worlds are drawn from a table of whole scores.",
              {},
              {}};
  Table table{"Coverage", Coverage::header("measure"), {}};
  for (const int items : {12, 36, 96}) {
    icc_row(worlds, items, 2, 0.3, table);
    icc_row(worlds, items, 4, 0.3, table);
    pair_rows(worlds, items, table);
    kappa_row(worlds, items, table);
  }
  study.tables.push_back(std::move(table));
  study.findings = {
      "The intervals of ICC, bias and limits hold from 36 balls on, and nearly so with 12.",
      "Kappa's interval, from leaving one ball out at a time, holds from 12 balls on; but there it "
      "is 0.7 wide. Score 36 balls or more together before reading it."};
  return study;
}

} // namespace baize::evidence
