// The season model of the demo club: 19 greens, 3 years. One evaluation of the
// likelihood, the whole fit with its draws, one green's year, and the fit with all
// greens' years (aim: within a second on one core). A second fit
// costs what the first did: nothing is kept between clubs.
#include "baize/demo/demo_club.h"
#include "baize/season/project.h"

#include <benchmark/benchmark.h>

namespace baize {
namespace {

// Asked for before each clock starts, so that none times the making of the club.
const demo::DemoClub& club() {
  static const demo::DemoClub made = demo::make();
  return made;
}

season::Model model() {
  return season::read_model(club().records, club().weather, club().today);
}

void evaluate(benchmark::State& state) {
  const season::Model read = model();
  season::Parameters at;
  at.rate.assign(read.methods.size(), 0.17);
  at.typical_depth.assign(read.methods.size(), 1.3);
  for (auto _ : state) {
    benchmark::DoNotOptimize(season::evaluate(read, {}, at, false).log_likelihood);
  }
}
BENCHMARK(evaluate)->Unit(benchmark::kMillisecond);

void fit(benchmark::State& state) {
  const auto clubs = state.range(0);
  club();
  int asked = 0;
  for (auto _ : state) {
    for (std::int64_t i = 0; i < clubs; ++i) {
      asked = season::fit_season(model()).summary.iterations;
    }
  }
  state.SetItemsProcessed(state.iterations() * clubs);
  state.counters["search_evaluations"] = asked;
}
BENCHMARK(fit)->Arg(1)->Arg(10)->Unit(benchmark::kMillisecond);

void project(benchmark::State& state) {
  const season::SeasonFit fitted = season::fit_season(model());
  for (auto _ : state) {
    benchmark::DoNotOptimize(
        season::project(fitted, club().records, "7", "", units::calendar_year(2024)).open_days);
  }
}
/// What a report of the whole club asks: one fit, and the last year of all greens.
void whole_club(benchmark::State& state) {
  club();
  for (auto _ : state) {
    const season::SeasonFit fitted = season::fit_season(model());
    for (const green::Green& green : club().records.greens) {
      benchmark::DoNotOptimize(
          season::project(fitted, club().records, green.id, "", units::calendar_year(2024)));
    }
  }
}
BENCHMARK(whole_club)->Unit(benchmark::kMillisecond);

BENCHMARK(project)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace baize

BENCHMARK_MAIN();
