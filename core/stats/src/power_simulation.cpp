#include "baize/stats/power_simulation.h"

#include "baize/stats/binomial.h"
#include "checks.h"

namespace baize::stats {

std::optional<units::Problem> PowerSimulationOptions::problem() const {
  auto wrong = outside_open("repeats", repeats, 0, 10000001, "a whole number, 1 to 10000000");
  return wrong ? wrong : outside_open("confidence", confidence, 0, 1, "above 0 and below 1");
}

SimulatedPower simulate_power(const TrialDraw& draw, const PowerSimulationOptions& options,
                              const Watch& watch) {
  SimulatedPower result;
  if (auto problem = options.problem()) {
    result.summary = refused(*problem);
    return result;
  }
  for (; result.repeats < options.repeats; ++result.repeats) {
    if (watch && result.repeats % 16 == 0 &&
        !watch(static_cast<double>(result.repeats) / options.repeats)) {
      result.summary = stopped();
      return result;
    }
    Random random(options.seed, static_cast<std::uint64_t>(result.repeats));
    const std::optional<bool> found = draw(random);
    result.significant += found.value_or(false) ? 1 : 0;
    result.unanswered += found ? 0 : 1;
  }
  const Proportion share = wilson(result.significant, result.repeats, {options.confidence});
  result.power = share.share;
  result.interval = share.interval;
  result.summary = share.summary;
  return result;
}

} // namespace baize::stats
