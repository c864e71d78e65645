// A season of a green: fit of the local level, and the smoother of a model of
// three states, each over a year of days.
#include "baize/stats/local_level.h"
#include "baize/stats/state_space.h"

#include <benchmark/benchmark.h>

#include <cmath>

namespace {

using namespace baize::stats;

double score(int day) {
  return 7.5 + std::sin(day / 50.0) + ((day * 37) % 11 - 5) / 10.0;
}

void fit_year(benchmark::State& state) {
  std::vector<LevelReading> readings;
  for (int day = 0; day < 365; ++day) {
    readings.push_back(
        {static_cast<double>(day), day % 3 == 0 ? std::optional(score(day)) : std::nullopt, 1});
  }
  for (auto _ : state) {
    const auto fit = fit_local_level(readings);
    if (!fit.summary.usable) {
      state.SkipWithError(fit.summary.message.c_str());
      break;
    }
    benchmark::DoNotOptimize(fit.levels.data());
  }
}
BENCHMARK(fit_year)->Unit(benchmark::kMillisecond);

StateSpace three_states() {
  StateSpace model;
  model.start_mean = Eigen::VectorXd::Zero(3);
  model.diffuse = {true, true, true};
  for (int day = 0; day < 365; ++day) {
    StateStep step;
    step.transition = Eigen::Vector3d(1, 0.95, 0.8).asDiagonal();
    step.state_noise = Eigen::Vector3d(0.01, 0, 0.1).asDiagonal();
    step.loading = Eigen::Vector3d(1, -1, 1);
    step.noise = 0.3;
    step.value = day % 2 == 0 ? std::optional(score(day)) : std::nullopt;
    model.steps.push_back(step);
  }
  return model;
}

void log_likelihood_year(benchmark::State& state) {
  const StateSpace model = three_states();
  for (auto _ : state) {
    benchmark::DoNotOptimize(kalman_filter(model, false).log_likelihood);
  }
}
BENCHMARK(log_likelihood_year)->Unit(benchmark::kMillisecond);

void smooth_year(benchmark::State& state) {
  const StateSpace model = three_states();
  for (auto _ : state) {
    benchmark::DoNotOptimize(kalman_smooth(model).states.data());
  }
}
BENCHMARK(smooth_year)->Unit(benchmark::kMillisecond);

} // namespace
