// Designed trials, comparisons of means, curves, power and the bootstrap, at the size of
// a large trial of greens.
#include "baize/stats/bootstrap.h"
#include "baize/stats/dunnett.h"
#include "baize/stats/mean_comparisons.h"
#include "baize/stats/nonlinear_least_squares.h"
#include "baize/stats/power.h"
#include "baize/stats/random.h"
#include "baize/stats/sphericity.h"
#include "baize/stats/trial_means.h"

#include <benchmark/benchmark.h>

#include <cmath>

namespace {

using namespace baize::stats;

/// 6 blocks, 4 whole plots, 5 subplots: 120 values.
DesignedTrial split_plot() {
  Random random(1);
  DesignedTrial trial{{}, {{"a", {}}, {"b", {}}}, {{"block", {}}, {"whole plot", {}}}};
  for (int i = 0; i < 120; ++i) {
    trial.y.emplace_back(7 + random.normal());
    trial.strata[0].level.push_back(i / 20);
    trial.strata[1].level.push_back(i / 5);
    trial.treatments[0].level.push_back(i / 5 % 4);
    trial.treatments[1].level.push_back(i % 5);
  }
  return trial;
}

void anova_split_plot(benchmark::State& state) {
  const auto trial = split_plot();
  for (auto _ : state) {
    benchmark::DoNotOptimize(trial_anova(trial).mean);
  }
}
BENCHMARK(anova_split_plot)->Unit(benchmark::kMicrosecond);

void anova_four_lost_plots(benchmark::State& state) {
  auto trial = split_plot();
  for (const std::size_t plot : {3, 40, 77, 119}) {
    trial.y[plot].reset();
  }
  for (auto _ : state) {
    benchmark::DoNotOptimize(trial_anova(trial).mean);
  }
}
BENCHMARK(anova_four_lost_plots)->Unit(benchmark::kMicrosecond);

void all_differences(benchmark::State& state) {
  const auto trial = split_plot();
  for (auto _ : state) {
    benchmark::DoNotOptimize(trial_means(trial, {0, 1}).differences.size());
  }
}
BENCHMARK(all_differences)->Unit(benchmark::kMicrosecond);

std::vector<double> twelve_means() {
  std::vector<double> means;
  means.reserve(12);
  for (int i = 0; i < 12; ++i) {
    means.push_back(5 + (i * 7 % 12) / 4.0);
  }
  return means;
}

void tukey_twelve(benchmark::State& state) {
  const auto means = twelve_means();
  const auto pairs = pair_differences(means, std::vector<int>(12, 5), 1.5, 48);
  for (auto _ : state) {
    benchmark::DoNotOptimize(compare_means(means, pairs).letters.size());
  }
}
BENCHMARK(tukey_twelve)->Unit(benchmark::kMillisecond);

void dunnett_twelve(benchmark::State& state) {
  const auto means = twelve_means();
  const std::vector<int> counts{9, 5, 4, 6, 5, 3, 5, 5, 7, 5, 4, 5};
  for (auto _ : state) {
    benchmark::DoNotOptimize(dunnett(means, counts, 0, 1.5, 51).critical);
  }
}
BENCHMARK(dunnett_twelve)->Unit(benchmark::kMillisecond);

void recovery_curve(benchmark::State& state) {
  Random random(2);
  std::vector<double> y;
  y.reserve(40);
  const CurveModel curve = [](const std::vector<double>& b, std::size_t row) {
    return b[0] + (b[1] - b[0]) * std::exp(-b[2] * static_cast<double>(row));
  };
  for (std::size_t row = 0; row < 40; ++row) {
    y.push_back(curve({8.2, 5, 0.2}, row) + 0.15 * random.normal());
  }
  for (auto _ : state) {
    const auto fit = nonlinear_least_squares(y, curve, {8, 6, 0.1});
    if (!fit.summary.usable) {
      state.SkipWithError(fit.summary.message.c_str());
      break;
    }
    benchmark::DoNotOptimize(profile_interval(y, curve, fit, 2).interval);
  }
}
BENCHMARK(recovery_curve)->Unit(benchmark::kMillisecond);

void sample_sizes(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(sample_size(TTestPlan{0.4, 1, false, true, 0.05}, 0.9).n);
    benchmark::DoNotOptimize(sample_size(AnovaPlan{5, 0.25, 0.05}, 0.9).n);
  }
}
BENCHMARK(sample_sizes)->Unit(benchmark::kMicrosecond);

void bootstrap_mean(benchmark::State& state) {
  std::vector<double> values;
  values.reserve(50);
  for (int i = 0; i < 50; ++i) {
    values.push_back((i * i) % 37);
  }
  const Resampled mean = [&](const std::vector<std::size_t>& drawn) {
    double sum = 0;
    for (const std::size_t unit : drawn) {
      sum += values[unit];
    }
    return sum / static_cast<double>(drawn.size());
  };
  for (auto _ : state) {
    benchmark::DoNotOptimize(bootstrap(50, mean).standard_error);
  }
}
BENCHMARK(bootstrap_mean)->Unit(benchmark::kMillisecond);

void random_normals(benchmark::State& state) {
  Random random(3);
  for (auto _ : state) {
    benchmark::DoNotOptimize(random.normal());
  }
}
BENCHMARK(random_normals)->Unit(benchmark::kNanosecond);

} // namespace
