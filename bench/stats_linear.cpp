// A trial's regression and analysis of variance, at the size of a large trial.
#include "baize/stats/least_squares.h"
#include "baize/stats/one_way_anova.h"

#include <benchmark/benchmark.h>

namespace {

using namespace baize::stats;

void least_squares_trial(benchmark::State& state) {
  std::vector<LeastSquaresRow> rows;
  for (int i = 0; i < 1000; ++i) {
    LeastSquaresRow row{static_cast<double>((i * 37) % 101), {}};
    for (int k = 1; k <= 8; ++k) {
      row.x.push_back(static_cast<double>((i * (2 * k + 1)) % (11 + k)));
    }
    rows.push_back(row);
  }
  for (auto _ : state) {
    const auto fit = least_squares(rows);
    if (!fit.summary.usable) {
      state.SkipWithError(fit.summary.message.c_str());
      break;
    }
    benchmark::DoNotOptimize(fit.coefficients.data());
  }
}
BENCHMARK(least_squares_trial)->Unit(benchmark::kMillisecond);

void anova_trial(benchmark::State& state) {
  std::vector<std::vector<double>> groups(8);
  for (int i = 0; i < 1000; ++i) {
    groups[static_cast<std::size_t>(i % 8)].push_back((i * 37) % 101);
  }
  for (auto _ : state) {
    benchmark::DoNotOptimize(one_way_anova(groups).f);
  }
}
BENCHMARK(anova_trial)->Unit(benchmark::kMillisecond);

} // namespace
