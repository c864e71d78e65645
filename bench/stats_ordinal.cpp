// Ordinal regression at the size of a club's record, and with observers at that of a
// season.
#include "baize/stats/ordinal_observers.h"
#include "baize/stats/random.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>

namespace {

using namespace baize::stats;

OrdinalData scores(int rows) {
  Random random(4);
  OrdinalData data{{}, {{}, {}}};
  for (int i = 0; i < rows; ++i) {
    const double x = random.normal();
    const double z = i % 2;
    data.covariates[0].push_back(x);
    data.covariates[1].push_back(z);
    const double line = 7 + 0.8 * x - 0.5 * z + 1.2 * random.normal();
    data.category.push_back(static_cast<int>(std::lround(std::clamp(line, 4.0, 9.0))));
  }
  return data;
}

void ordinal(benchmark::State& state) {
  const auto data = scores(static_cast<int>(state.range(0)));
  for (auto _ : state) {
    const auto fit = fit_ordinal(data);
    if (!fit.summary.usable) {
      state.SkipWithError(fit.summary.message.c_str());
      break;
    }
    benchmark::DoNotOptimize(fit.deviance);
  }
}
BENCHMARK(ordinal)->Arg(500)->Arg(20000)->Unit(benchmark::kMillisecond);

void ordinal_observers(benchmark::State& state) {
  const auto data = scores(500);
  std::vector<int> observer;
  for (int i = 0; i < 500; ++i) {
    observer.push_back(i % 7);
  }
  for (auto _ : state) {
    const auto fit = fit_ordinal_observers(data, observer);
    if (!fit.summary.usable) {
      state.SkipWithError(fit.summary.message.c_str());
      break;
    }
    benchmark::DoNotOptimize(fit.observer_sd);
  }
}
BENCHMARK(ordinal_observers)->Unit(benchmark::kMillisecond);

} // namespace
