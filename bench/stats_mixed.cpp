// Mixed models at the size of many years of visits, and at that of one trial.
#include "baize/stats/mixed.h"
#include "baize/stats/mixed_profile.h"
#include "baize/stats/random.h"

#include <benchmark/benchmark.h>

#include <vector>

namespace {

using namespace baize::stats;

MixedModel visits(int rows, int spots, int observers) {
  Random random(11);
  std::vector<double> spot(static_cast<std::size_t>(spots));
  std::vector<double> observer(static_cast<std::size_t>(observers) + 1);
  for (auto* effects : {&spot, &observer}) {
    for (double& effect : *effects) {
      effect = 0.7 * random.normal();
    }
  }
  MixedModel model{{}, {{}, {}}, true, {{"spot", {}}}};
  if (observers > 0) {
    model.random.push_back({"observer", {}});
  }
  for (int r = 0; r < rows; ++r) {
    const auto s = random.below(spot.size());
    const auto o = observers > 0 ? random.below(observer.size() - 1) : observer.size() - 1;
    model.fixed[0].push_back(random.normal());
    model.fixed[1].push_back(s % 2 == 0 ? 1 : 0);
    model.y.push_back(7 + 0.3 * model.fixed[0].back() + spot[s] + observer[o] + random.normal());
    model.random[0].group.push_back(static_cast<int>(s));
    if (observers > 0) {
      model.random[1].group.push_back(static_cast<int>(o));
    }
  }
  return model;
}

void fit(benchmark::State& state, const MixedModel& model) {
  for (auto _ : state) {
    const auto found = fit_mixed(model);
    if (!found.summary.usable) {
      state.SkipWithError(found.summary.message.c_str());
      break;
    }
    benchmark::DoNotOptimize(found.criterion);
  }
}

void mixed_one_factor(benchmark::State& state) {
  fit(state, visits(20000, 1000, 0));
}
BENCHMARK(mixed_one_factor)->Unit(benchmark::kMillisecond);

void mixed_crossed(benchmark::State& state) {
  fit(state, visits(20000, 1000, 20));
}
BENCHMARK(mixed_crossed)->Unit(benchmark::kMillisecond);

void mixed_trial(benchmark::State& state) {
  fit(state, visits(200, 18, 4));
}
BENCHMARK(mixed_trial)->Unit(benchmark::kMillisecond);

void mixed_trial_profile(benchmark::State& state) {
  const auto model = visits(200, 18, 4);
  for (auto _ : state) {
    benchmark::DoNotOptimize(profile_mixed(model).residual_sd.low);
  }
}
BENCHMARK(mixed_trial_profile)->Unit(benchmark::kMillisecond);

} // namespace
