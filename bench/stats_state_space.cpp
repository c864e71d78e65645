// A season of a green: fit of the local level, and the smoother of a model of
// three states, each over a year of days; the local level over ten years of days
// (bench/peers/level.R compares them with R); the test of what a fit leaves.
#include "baize/stats/ljung_box.h"
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

constexpr int kTenYears = 3650;

std::vector<LevelReading> ten_years() {
  std::vector<LevelReading> readings;
  for (int day = 0; day < kTenYears; ++day) {
    readings.push_back({static_cast<double>(day), score(day), 1});
  }
  return readings;
}

/// Log-likelihood and smoothed level of every day, variances given.
void level_of_ten_years(benchmark::State& state) {
  const std::vector<LevelReading> readings = ten_years();
  for (auto _ : state) {
    benchmark::DoNotOptimize(smooth_local_level(readings, {0.1, 0.001}).levels.data());
  }
}
BENCHMARK(level_of_ten_years)->Unit(benchmark::kMillisecond);

/// The variances searched for as well.
void fit_of_ten_years(benchmark::State& state) {
  const std::vector<LevelReading> readings = ten_years();
  for (auto _ : state) {
    benchmark::DoNotOptimize(fit_local_level(readings).log_likelihood);
  }
}
BENCHMARK(fit_of_ten_years)->Unit(benchmark::kMillisecond);

/// Errors of 19 greens' visits, `range` each.
void portmanteau(benchmark::State& state) {
  std::vector<std::vector<double>> series(19);
  for (std::size_t i = 0; i < series.size(); ++i) {
    for (int visit = 0; visit < state.range(0); ++visit) {
      series[i].push_back(score(visit + static_cast<int>(i)) - 7.5);
    }
  }
  for (auto _ : state) {
    benchmark::DoNotOptimize(ljung_box(series).p);
  }
  state.SetItemsProcessed(state.iterations() * 19 * state.range(0));
}
BENCHMARK(portmanteau)->Arg(180)->Arg(1800)->Unit(benchmark::kMicrosecond);

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
