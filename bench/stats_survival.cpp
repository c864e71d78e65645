// Recovery times of a thousand works, each seen on visits only: the curve and the
// regression.
#include "baize/stats/aft.h"
#include "baize/stats/kaplan_meier.h"
#include "baize/stats/turnbull.h"

#include <benchmark/benchmark.h>

#include <cstdint>
#include <limits>

namespace {

using namespace baize::stats;

std::vector<AftObservation> works(std::int64_t count) {
  std::vector<AftObservation> result;
  for (std::int64_t i = 0; i < count; ++i) {
    const auto left = static_cast<double>(3 + (i * 7) % 31);
    const auto wide = static_cast<double>(1 + (i * 5) % 9);
    const double right = i % 6 == 0 ? std::numeric_limits<double>::infinity() : left + wide;
    result.push_back({{left, right}, {static_cast<double>(i % 2), static_cast<double>(i % 11)}});
  }
  return result;
}

void curve(benchmark::State& state) {
  std::vector<CensoredTime> times;
  for (const AftObservation& one : works(state.range(0))) {
    times.push_back(one.time);
  }
  for (auto _ : state) {
    const auto found = turnbull(times);
    if (!found.summary.usable) {
      state.SkipWithError(found.summary.message.c_str());
      break;
    }
    benchmark::DoNotOptimize(found.support.data());
  }
}
BENCHMARK(curve)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond);

void product_limit(benchmark::State& state) {
  std::vector<FollowUp> times;
  for (const AftObservation& one : works(state.range(0))) {
    times.push_back({one.time.left, !one.time.right_censored()});
  }
  for (auto _ : state) {
    benchmark::DoNotOptimize(kaplan_meier(times).steps.data());
  }
}
BENCHMARK(product_limit)->Arg(1000)->Unit(benchmark::kMillisecond);

void regression(benchmark::State& state) {
  const auto observations = works(1000);
  const AftOptions options{static_cast<AftDistribution>(state.range(0))};
  for (auto _ : state) {
    const auto found = fit_aft(observations, options);
    if (!found.summary.usable) {
      state.SkipWithError(found.summary.message.c_str());
      break;
    }
    benchmark::DoNotOptimize(found.coefficients.data());
  }
}
BENCHMARK(regression)->DenseRange(0, 3)->Unit(benchmark::kMillisecond);

} // namespace
