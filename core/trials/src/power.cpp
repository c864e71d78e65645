#include "baize/trials/power.h"

#include "baize/stats/binomial.h"
#include "baize/stats/distributions.h"
#include "baize/stats/random.h"
#include "baize/units/number.h"
#include "simulated_trial.h"

#include <algorithm>
#include <cmath>

namespace baize::trials {
namespace {

using units::Problem;

std::optional<Problem> outside(const char* field, double value, double low, double high) {
  if (value >= low && value <= high) {
    return std::nullopt;
  }
  return Problem{"option_out_of_range", field, units::write_number(value),
                 units::write_number(low) + " to " + units::write_number(high), ""};
}

std::optional<Problem> bad_shape(const TrialShape& shape) {
  const bool two = shape.layout == Layout::split_plot || shape.layout == Layout::strip_plot;
  auto problem = outside("treatments", shape.treatments, 2, 60);
  problem = problem ? problem : outside("seconds", shape.seconds, two ? 2 : 1, two ? 60 : 1);
  return problem ? problem : outside("blocks", shape.blocks, 2, 1000);
}

/// In each simulated trial: what chance added to the difference, and how far from 0
/// a difference must be to count.
std::vector<Chance> draw(const TrialShape& shape, const PowerOptions& options, bool second) {
  const double plot =
      std::hypot(options.spread.plot, options.spread.visit / std::sqrt(double(options.visits)));
  std::vector<Chance> chances;
  for (int i = 0; i < options.repeats; ++i) {
    stats::Random random(options.seed, static_cast<std::uint64_t>(i));
    chances.push_back(simulated(shape, options.spread.whole_plot, plot, second, random));
  }
  const double t = stats::t_quantile(1 - options.alpha / 2, error_df(shape, second));
  for (Chance& chance : chances) {
    chance.limit *= t;
  }
  return chances;
}

int found(const std::vector<Chance>& chances, double difference) {
  return static_cast<int>(std::count_if(chances.begin(), chances.end(), [&](const Chance& one) {
    return std::fabs(difference + one.error) > one.limit;
  }));
}

/// The difference from which on the wanted share is found.
double detectable(const std::vector<Chance>& chances, double power) {
  double low = 0;
  double high = 1e-3;
  const double wanted = power * static_cast<double>(chances.size());
  while (found(chances, high) < wanted) {
    low = high;
    high *= 2;
  }
  for (int i = 0; i < 50; ++i) {
    const double middle = (low + high) / 2;
    (found(chances, middle) < wanted ? low : high) = middle;
  }
  return high;
}

TablePower table_of(const TrialShape& shape, const PowerOptions& options, bool second) {
  const auto chances = draw(shape, options, second);
  TablePower table;
  table.of = second ? "second treatment" : "treatment";
  table.error_df = error_df(shape, second);
  table.detectable = detectable(chances, options.power);
  for (int quarter = 0; quarter <= 8; ++quarter) {
    const double difference = table.detectable * quarter / 4;
    const auto share = stats::wilson(found(chances, difference), options.repeats);
    table.curve.push_back({difference, share.share, share.interval});
  }
  return table;
}

} // namespace

std::optional<Problem> PowerOptions::problem() const {
  constexpr double kMost = 1e6;
  auto found = outside("whole_plot", spread.whole_plot, 0, kMost);
  found = found ? found : outside("plot", spread.plot, 0, kMost);
  found = found ? found : outside("visit", spread.visit, 0, kMost);
  found = found ? found : outside("visits", visits, 1, 1000);
  found = found ? found : outside("alpha", alpha, 1e-6, 0.5);
  found = found ? found : outside("power", power, alpha, 1 - 1e-6);
  found = found ? found : outside("repeats", repeats, 100, 100000);
  if (!found && !(spread.plot > 0) && !(spread.visit > 0)) {
    return Problem{"option_out_of_range", "plot", "0", "above 0, or `visit` above 0", ""};
  }
  return found;
}

TrialPower simulate_power(const TrialShape& shape, const PowerOptions& options) {
  TrialPower result;
  auto problem = options.problem();
  problem = problem ? problem : bad_shape(shape);
  if (problem) {
    result.summary = stats::refused(*problem);
    return result;
  }
  result.tables.push_back(table_of(shape, options, false));
  if (shape.seconds > 1) {
    result.tables.push_back(table_of(shape, options, true));
  }
  for (const int more : {-2, -1, 1, 2, 4}) {
    TrialShape other = shape;
    other.blocks += more;
    if (!bad_shape(other)) {
      result.other_blocks.push_back(
          {other.blocks, detectable(draw(other, options, false), options.power)});
    }
  }
  result.summary = stats::done();
  return result;
}

TrialShape shape_of(const Plan& plan) {
  const auto t = treatments(plan).size();
  return {plan.layout, static_cast<int>(t), std::max(1, static_cast<int>(seconds(plan).size())),
          static_cast<int>(plan.has_blocks() ? blocks(plan).size() : plan.plots.size() / t)};
}

} // namespace baize::trials
