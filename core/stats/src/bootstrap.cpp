#include "baize/stats/bootstrap.h"

#include "baize/stats/distributions.h"
#include "baize/stats/random.h"
#include "checks.h"

#include <algorithm>
#include <numeric>

namespace baize::stats {
namespace {

/// By straight lines between the order statistics, the first and last held.
double quantile(const std::vector<double>& sorted, double p) {
  const auto size = static_cast<double>(sorted.size());
  const double place = std::clamp(p * (size + 1), 1.0, size);
  const auto below = static_cast<std::size_t>(place);
  const double share = place - static_cast<double>(below);
  const double from = sorted[below - 1];
  return share > 0 ? from + share * (sorted[below] - from) : from;
}

/// Of all units but one, for each; absent where one cannot be had or all are equal.
std::optional<double> acceleration_of(std::size_t units, const Resampled& statistic) {
  std::vector<double> without;
  for (std::size_t i = 0; i < units; ++i) {
    std::vector<std::size_t> kept(units - 1);
    std::iota(kept.begin(), kept.end(), std::size_t{0});
    for (std::size_t k = i; k < kept.size(); ++k) {
      ++kept[k];
    }
    without.push_back(statistic(kept));
  }
  const double mean =
      std::accumulate(without.begin(), without.end(), 0.0) / static_cast<double>(units);
  double squares = 0;
  double cubes = 0;
  for (const double value : without) {
    const double off = mean - value;
    squares += off * off;
    cubes += off * off * off;
  }
  const double acceleration = cubes / (6 * std::pow(squares, 1.5));
  return std::isfinite(acceleration) ? std::optional(acceleration) : std::nullopt;
}

void fill_bca(std::size_t units, const Resampled& statistic, double tail, Bootstrap& result) {
  double below = 0;
  for (const double value : result.repeats) {
    below += value < result.estimate ? 1 : value == result.estimate ? 0.5 : 0;
  }
  const double z0 = normal_quantile(below / static_cast<double>(result.repeats.size()));
  const auto a = acceleration_of(units, statistic);
  if (!a || !std::isfinite(z0)) {
    return;
  }
  const auto end = [&](double p) {
    const double z = z0 + normal_quantile(p);
    const double room = 1 - *a * z;
    return room > 0 ? quantile(result.repeats, normal_cdf(z0 + z / room)) : std::nan("");
  };
  const Interval interval{end(tail), end(1 - tail)};
  if (std::isfinite(interval.low) && std::isfinite(interval.high)) {
    result.bca = interval;
    result.bias_correction = z0;
    result.acceleration = *a;
  }
}

/// False when asked to stop.
bool draw(std::size_t units, const Resampled& statistic, const BootstrapOptions& options,
          const Watch& watch, Bootstrap& result) {
  std::vector<std::size_t> drawn(units);
  for (int repeat = 0; repeat < options.repeats; ++repeat) {
    if (watch && repeat % 64 == 0 && !watch(static_cast<double>(repeat) / options.repeats)) {
      return false;
    }
    Random random(options.seed, static_cast<std::uint64_t>(repeat));
    for (std::size_t& unit : drawn) {
      unit = random.below(units);
    }
    const double value = statistic(drawn);
    if (std::isfinite(value)) {
      result.repeats.push_back(value);
    } else {
      ++result.failed;
    }
  }
  std::sort(result.repeats.begin(), result.repeats.end());
  return true;
}

std::optional<units::Problem> unusable(const Bootstrap& result, int repeats) {
  if (2 * result.failed >= repeats) {
    return units::Problem{"too_few", "repeats", std::to_string(result.repeats.size()),
                          "more than half with a statistic", ""};
  }
  if (result.repeats.front() == result.repeats.back()) {
    return units::Problem{"all_equal", "repeats",
                          units::write_number(result.repeats.front()) + " in every repeat",
                          "of more than one size", ""};
  }
  return std::nullopt;
}

} // namespace

std::optional<units::Problem> BootstrapOptions::problem() const {
  auto wrong = outside_open("repeats", repeats, 99, 1000001, "a whole number, 100 to 1000000");
  return wrong ? wrong : outside_open("confidence", confidence, 0, 1, "above 0 and below 1");
}

Bootstrap bootstrap(std::size_t units, const Resampled& statistic, const BootstrapOptions& options,
                    const Watch& watch) {
  Bootstrap result;
  auto problem = options.problem();
  problem = problem ? problem : too_few("units", units, 2);
  if (!problem) {
    std::vector<std::size_t> all(units);
    std::iota(all.begin(), all.end(), std::size_t{0});
    result.estimate = statistic(all);
    problem = not_finite("statistic", std::span(&result.estimate, 1));
  }
  if (problem) {
    result.summary = refused(*problem);
    return result;
  }
  if (!draw(units, statistic, options, watch, result)) {
    result.summary = stopped();
    return result;
  }
  if (auto lacking = unusable(result, options.repeats)) {
    result.summary = degenerate(*lacking);
    return result;
  }
  const auto size = static_cast<double>(result.repeats.size());
  const double mean = std::accumulate(result.repeats.begin(), result.repeats.end(), 0.0) / size;
  double squares = 0;
  for (const double value : result.repeats) {
    squares += (value - mean) * (value - mean);
  }
  result.bias = mean - result.estimate;
  result.standard_error = std::sqrt(squares / (size - 1));
  const double tail = (1 - options.confidence) / 2;
  result.percentile = {quantile(result.repeats, tail), quantile(result.repeats, 1 - tail)};
  fill_bca(units, statistic, tail, result);
  result.summary = done_if_finite({result.bias, result.standard_error});
  return result;
}

} // namespace baize::stats
