// Two observers over many shared visits, and variance components of many balls.
#include "baize/consistency/nested.h"
#include "baize/observers/lean.h"
#include "baize/observers/pair.h"

#include <benchmark/benchmark.h>

namespace {

using namespace baize;

/// Sessions of twelve balls whose scores differ without chance.
observers::SharedTable table(std::size_t sessions) {
  observers::SharedTable made;
  made.observers = {"a", "b"};
  for (std::size_t s = 0; s < sessions; ++s) {
    made.sessions.push_back({"s", units::Day{static_cast<std::int32_t>(s)}, "1", {}, {}});
    for (std::size_t ball = 0; ball < 12; ++ball) {
      const auto score = static_cast<double>(5 + (s * 7 + ball * 5) % 5);
      const auto gap = static_cast<double>((s * 3 + ball * ball) % 3) - 1;
      observers::SharedItem item;
      item.session = s;
      item.order = static_cast<int>(ball) + 1;
      item.scores = {score, score + gap};
      made.rolls.push_back(item);
      made.runs.push_back(item);
    }
  }
  return made;
}

void pair_of(benchmark::State& state) {
  const auto shared = table(static_cast<std::size_t>(state.range(0)));
  for (auto _ : state) {
    benchmark::DoNotOptimize(observers::pair_agreement(shared, "a", "b").sd);
  }
}
BENCHMARK(pair_of)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond);

void lean_of(benchmark::State& state) {
  const auto shared = table(static_cast<std::size_t>(state.range(0)));
  for (auto _ : state) {
    benchmark::DoNotOptimize(observers::lean_of(shared, "a").bias.value);
  }
}
BENCHMARK(lean_of)->Arg(1000)->Unit(benchmark::kMillisecond);

void nested_50k_balls(benchmark::State& state) {
  std::vector<consistency::NestedValue> values;
  for (int i = 0; i < 50000; ++i) {
    values.push_back({{std::to_string(i % 18), std::to_string(i / 216), std::to_string(i / 18 % 2)},
                      static_cast<double>(5 + i * 7 % 5)});
  }
  for (auto _ : state) {
    benchmark::DoNotOptimize(
        consistency::nested_components(values, {"green", "visit", "spot", "ball"}).mean);
  }
}
BENCHMARK(nested_50k_balls)->Unit(benchmark::kMillisecond);

} // namespace
