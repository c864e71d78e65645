// How long a layout, its power and the analysis of a whole trial take.
#include "baize/stats/random.h"
#include "baize/trials/analysis.h"
#include "baize/trials/design.h"
#include "baize/trials/power.h"

#include <benchmark/benchmark.h>

#include <cmath>

namespace {

using namespace baize;

trials::Design design_of(int treatments, int blocks) {
  trials::Design design;
  design.trial = "bench";
  for (int i = 0; i < treatments; ++i) {
    design.treatments.push_back("t" + std::to_string(i));
  }
  design.control = "t0";
  design.blocks = blocks;
  return design;
}

void lay_out(benchmark::State& state) {
  trials::Design design = design_of(static_cast<int>(state.range(0)), 6);
  for (auto _ : state) {
    ++design.seed;
    benchmark::DoNotOptimize(trials::lay_out(design));
  }
}
BENCHMARK(lay_out)->Arg(4)->Arg(20);

void power(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(trials::simulate_power(
        {trials::Layout::split_plot, 3, 4, static_cast<int>(state.range(0))}));
  }
}
BENCHMARK(power)->Arg(4)->Arg(8)->Unit(benchmark::kMillisecond);

/// A season: `visits` three days apart; scores fall and come back. Whole ones are
/// compared as ranks too.
void analyse(benchmark::State& state, int visits, bool whole) {
  const trials::Plan plan = *trials::lay_out(design_of(4, 6));
  const units::Day start = *units::make_day(2025, 4, 1);
  stats::Random random(1);
  std::vector<trials::Record> records;
  for (int visit = 1; visit <= visits; ++visit) {
    for (const trials::Plot& plot : plan.plots) {
      const double depth = plot.treatment == "t0" ? 0 : 3.0 + (plot.treatment[1] - '0');
      const double score = 8.5 - depth * std::exp(-0.15 * visit) + 0.2 * random.normal();
      records.push_back({"", plot.number, start + 3 * visit, "score",
                         std::fmin(10, whole ? std::round(score) : score), ""});
    }
  }
  const trials::Values values = *trials::gather(plan, records);
  trials::AnalysisOptions options;
  options.treated = start;
  for (auto _ : state) {
    benchmark::DoNotOptimize(trials::analyse(plan, values, options));
  }
}
BENCHMARK_CAPTURE(analyse, means_8_visits, 8, false)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(analyse, means_24_visits, 24, false)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(analyse, with_ranks_8_visits, 8, true)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(analyse, with_ranks_24_visits, 24, true)->Unit(benchmark::kMillisecond);

} // namespace
