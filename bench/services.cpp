// The demo club (19 greens, three years) made, and reviewed as the pages and the
// report ask for it.
#include "baize/demo/demo_club.h"
#include "baize/services/records_view.h"
#include "baize/services/report_data.h"

#include <benchmark/benchmark.h>

namespace baize {
namespace {

const demo::DemoClub& club() {
  static const demo::DemoClub made = demo::make();
  return made;
}

constexpr int kYear = 2025;

void make_demo(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(demo::make());
  }
}
BENCHMARK(make_demo)->Unit(benchmark::kMillisecond);

void greens_review(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(services::greens_review(club().records, club().weather, club().today));
  }
}
BENCHMARK(greens_review)->Unit(benchmark::kMillisecond);

void season_review(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(
        services::season_review(club().records, club().weather, "7", kYear, club().today));
  }
}
BENCHMARK(season_review)->Unit(benchmark::kMillisecond);

void work_review(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(
        services::work_review(club().records, club().weather, "2025-08-18/coring", club().today));
  }
}
BENCHMARK(work_review)->Unit(benchmark::kMillisecond);

void work_lines(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(services::work_lines(club().records, club().weather, club().today));
  }
}
BENCHMARK(work_lines)->Unit(benchmark::kMillisecond);

void visit_page(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(services::visit_page(club().records, {}));
  }
}
BENCHMARK(visit_page)->Unit(benchmark::kMillisecond);

void report_data(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(
        services::report_data(club().records, club().weather, kYear, club().today));
  }
}
BENCHMARK(report_data)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace baize

BENCHMARK_MAIN();
