// Green speed over many spots, the offer of a score, and the checking of records.
#include "baize/green/roll_score.h"
#include "baize/green/validate.h"
#include "baize/speed/green_speed.h"
#include "baize/speed/place.h"

#include <benchmark/benchmark.h>

#include <vector>

namespace {

using namespace baize;

/// Six rolls that differ from spot to spot, without chance.
std::vector<green::Run> spot(int number) {
  std::vector<green::Run> runs(2);
  runs[1].direction = green::Direction::back;
  for (green::Run& run : runs) {
    for (int order = 1; order <= 3; ++order) {
      const int step = (number * 7 + order * 11 + (&run == &runs[1] ? 5 : 0)) % 40;
      run.rolls.push_back({order, units::from_centimetres(280 + step), {}, {}});
    }
  }
  return runs;
}

void spots_100k(benchmark::State& state) {
  std::vector<std::vector<green::Run>> spots;
  spots.reserve(100000);
  for (int i = 0; i < 100000; ++i) {
    spots.push_back(spot(i));
  }
  for (auto _ : state) {
    double sum = 0;
    for (const auto& runs : spots) {
      sum += speed::spot_speed(runs)->speed_m;
    }
    benchmark::DoNotOptimize(sum);
  }
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(spots.size()));
}
BENCHMARK(spots_100k)->Unit(benchmark::kMillisecond);

void offers(benchmark::State& state) {
  int number = 0;
  for (auto _ : state) {
    benchmark::DoNotOptimize(green::offer({number % 3, number % 5, number % 4}));
    ++number;
  }
  state.SetItemsProcessed(state.iterations());
}
BENCHMARK(offers);

void places(benchmark::State& state) {
  int number = 0;
  for (auto _ : state) {
    benchmark::DoNotOptimize(speed::place_of_mark(0.01 * (number % 200), 3));
    ++number;
  }
  state.SetItemsProcessed(state.iterations());
}
BENCHMARK(places);

void visits_10k(benchmark::State& state) {
  green::Records records;
  records.visits.reserve(10000);
  records.greens.resize(1);
  records.greens[0].id = "1";
  const units::Day today{20000};
  for (int i = 0; i < 10000; ++i) {
    green::Visit visit;
    visit.id = std::to_string(i);
    visit.green = "1";
    visit.observer = "ann";
    visit.day = today - i / 8;
    visit.from = units::Minute{static_cast<std::int16_t>(400 + 10 * (i % 8))};
    visit.runs = spot(i);
    records.visits.push_back(visit);
  }
  if (!validate(records, today).empty()) {
    state.SkipWithError("the records should be valid");
  }
  for (auto _ : state) {
    benchmark::DoNotOptimize(validate(records, today));
  }
  state.SetItemsProcessed(state.iterations() * 10000);
}
BENCHMARK(visits_10k)->Unit(benchmark::kMillisecond);

} // namespace
