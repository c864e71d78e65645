#include "baize/green/roll_score.h"
#include "baize/green/validate.h"
#include "baize/units/number.h"
#include "checks.h"
#include "run_text.h"

#include <algorithm>

namespace baize::green {
namespace {

/// Three balls should stop within 8 in of each other (instruction booklet for
/// the release ramp, from memory).
constexpr double kSpreadMetres = 0.2032;
constexpr std::size_t kBallsOfARun = 3;

void remark_score(Checks& checks, const Run& run, const Roll& roll) {
  if (!contradicts(roll)) {
    return;
  }
  const Offer offered = offer(count(*roll.marks));
  const std::string band =
      offered.lowest == offered.highest
          ? std::to_string(offered.lowest)
          : std::to_string(offered.lowest) + " to " + std::to_string(offered.highest);
  checks.note("score_against_marks", "score", std::to_string(*roll.score),
              band + " by the marks of the roll", roll_text(run, roll));
}

void remark_spread(Checks& checks, const Run& run) {
  std::vector<double> metres;
  for (const Roll& roll : run.rolls) {
    if (roll.distance) {
      metres.push_back(roll.distance->metres);
    }
  }
  if (metres.size() < kBallsOfARun) {
    return;
  }
  const auto [shortest, longest] = std::minmax_element(metres.begin(), metres.end());
  const double spread = *longest - *shortest;
  constexpr double kRounding = 1e-9; // so that 3.2032 less 3 is not more than 0.2032
  if (spread > kSpreadMetres + kRounding) {
    checks.note("rolls_spread", "distance", units::show_number(spread * 100, 0) + " cm apart",
                "within 20.32 cm (8 in) of each other: roll again", run_text(run));
  }
}

void remark_total(Checks& checks, const Run& run) {
  if (!run.total || !run.total_of) {
    return;
  }
  const auto scored = std::count_if(run.rolls.begin(), run.rolls.end(),
                                    [](const Roll& roll) { return roll.score.has_value(); });
  if (scored != *run.total_of) {
    return; // some of its rolls' scores are not written down
  }
  const auto sum = score_sum(run);
  if (sum && sum->total != *run.total) {
    checks.note("total_against_scores", "total", std::to_string(*run.total),
                units::write_number(sum->total) + ", the sum of the rolls' scores", run_text(run));
  }
}

} // namespace

std::vector<units::Problem> remarks(const Visit& visit) {
  Checks checks(visit.source);
  for (const Run& run : visit.runs) {
    for (const Roll& roll : run.rolls) {
      remark_score(checks, run, roll);
    }
    remark_spread(checks, run);
    remark_total(checks, run);
  }
  return checks.take();
}

} // namespace baize::green
