#include "local_level_smoother.h"

#include "baize/units/number.h"
#include "level_filter.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <string>

namespace baize::stats::detail {
namespace {

using Readings = std::vector<LevelReading>;

/// What the walk forward leaves at a reading: the level as known by then, and what the
/// value there told; nothing where it is the first or was no news.
struct Step {
  double level = 0;
  double variance = 0;
  LevelNews told;
};

/// A value that agrees to rounding with a level known for certain is no news.
bool agrees(double value, double level) {
  return std::fabs(value - level) <= 1e-12 * (1 + std::fabs(value));
}

LocalLevelFit contradicted(double value, std::size_t place) {
  LocalLevelFit fit;
  fit.summary =
      degenerate({"value_contradicts", "value", units::write_number(value),
                  "the value the model is certain of", "reading " + std::to_string(place + 1)});
  return fit;
}

/// Steps of the readings from the first with a value on; the log-likelihood goes to `fit`.
/// False, and the refusal in `fit`, where a value contradicts.
bool forward(const Readings& readings, std::size_t first, const LocalLevelVariances& variances,
             std::vector<Step>& steps, LocalLevelFit& fit) {
  LevelFilter filter(*readings[first].value, variances.noise / readings[first].weight);
  steps.reserve(readings.size() - first);
  steps.push_back({filter.level(), filter.variance(), {}});
  for (std::size_t i = first + 1; i < readings.size(); ++i) {
    const LevelReading& r = readings[i];
    filter.walk(variances.level_per_day * (r.day - readings[i - 1].day));
    std::optional<LevelNews> told;
    if (r.value) {
      told = filter.take(*r.value, variances.noise / r.weight);
      if (!told && !agrees(*r.value, filter.level())) {
        fit = contradicted(*r.value, i);
        return false;
      }
    }
    steps.push_back({filter.level(), filter.variance(), told.value_or(LevelNews{})});
  }
  fit.log_likelihood = -0.5 * (filter.news() * std::log(2 * std::numbers::pi) +
                               filter.spread().log() + filter.squares());
  return true;
}

/// Smoothed level and variance of every step: with r and n of the values after it,
/// level + variance r and variance - variance^2 n.
void backward(std::vector<Step>& steps) {
  double r = 0;
  double n = 0;
  for (std::size_t i = steps.size(); i-- > 0;) {
    Step& step = steps[i];
    const double variance = step.variance;
    step.level += variance * r;
    // A variance of nothing may come out as minus a rounding error.
    step.variance = std::max(0.0, variance - variance * variance * n);
    const LevelNews& told = step.told;
    r = told.error * told.precision + told.kept * r;
    n = told.precision + told.kept * told.kept * n;
  }
}

} // namespace

LocalLevelFit smooth_sorted(const Readings& readings, const LocalLevelVariances& variances) {
  const auto first = static_cast<std::size_t>(
      std::find_if(readings.begin(), readings.end(), [](const auto& r) { return r.value; }) -
      readings.begin());
  LocalLevelFit fit;
  std::vector<Step> steps;
  if (!forward(readings, first, variances, steps, fit)) {
    return fit;
  }
  backward(steps);
  bool finite = std::isfinite(fit.log_likelihood);
  fit.levels.reserve(readings.size());
  for (std::size_t i = 0; i < readings.size(); ++i) {
    if (i > 0 && readings[i].day == readings[i - 1].day) {
      continue;
    }
    // Before the first value nothing is known but what walks back from it.
    const Step& step = steps[i < first ? 0 : i - first];
    const double before = i < first ? readings[first].day - readings[i].day : 0;
    const double variance = step.variance + variances.level_per_day * before;
    finite = finite && std::isfinite(step.level) && std::isfinite(variance);
    fit.levels.push_back({readings[i].day, step.level, std::sqrt(variance)});
  }
  fit.summary =
      finite
          ? done()
          : degenerate({"not_finite", "levels", "not finite", "finite numbers", "the local level"});
  return fit;
}

} // namespace baize::stats::detail
