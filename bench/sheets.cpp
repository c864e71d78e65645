// Reading and writing a large club: rows a second.
#include "baize/sheets/csv.h"
#include "baize/sheets/csv_sheets.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

namespace {

using namespace baize;
using Files = std::vector<services::ReceivedFile>;

/// `rolls` rolls: six a visit, 18 greens, one visit of each green a day.
Files large_club(int rolls) {
  std::string greens = "green,spot\n";
  for (int green = 1; green <= 18; ++green) {
    greens += fmt::format("{},A\n", green);
  }
  std::string rows = "day,from,observer,green,spot,direction,roll,distance_cm,bobbles,chatters,"
                     "snakes,score\n";
  const units::Day first = *units::make_day(1990, 1, 1);
  for (int i = 0; i < rolls; ++i) {
    const int visit = i / 6;
    rows += fmt::format("{},{:02}:{:02},o{},{},A,{},{},{},0,{},0,{}\n",
                        units::iso(first + visit / 18 % 12000), 6 + visit % 18 / 6, visit % 6 * 10,
                        visit / 18 / 12000, visit % 18 + 1, i % 6 < 3 ? "out" : "back", i % 3 + 1,
                        270 + i * 7 % 20, i % 2, 9 - i % 2);
  }
  return {{"club.csv", "club\nlarge\n"}, {"greens.csv", greens}, {"rolls.csv", rows}};
}

const units::Day kToday{60000};

void sheets_read(benchmark::State& state) {
  const int rolls = static_cast<int>(state.range(0));
  const Files files = large_club(rolls);
  const sheets::CsvSheets sheets;
  for ([[maybe_unused]] auto _ : state) {
    const auto reading = sheets.read(files, kToday);
    if (!reading.good()) {
      state.SkipWithError(units::sentence(reading.problems.front()).c_str());
      return;
    }
    benchmark::DoNotOptimize(reading.records.visits.size());
  }
  state.SetItemsProcessed(state.iterations() * rolls);
}
BENCHMARK(sheets_read)->Arg(10000)->Arg(1000000)->Unit(benchmark::kMillisecond);

void sheets_write_unchanged(benchmark::State& state) {
  const int rolls = static_cast<int>(state.range(0));
  const Files files = large_club(rolls);
  const sheets::CsvSheets sheets;
  const auto records = sheets.read(files, kToday).records;
  for ([[maybe_unused]] auto _ : state) {
    benchmark::DoNotOptimize(sheets.write(records, files).size());
  }
  state.SetItemsProcessed(state.iterations() * rolls);
}
BENCHMARK(sheets_write_unchanged)->Arg(10000)->Arg(200000)->Unit(benchmark::kMillisecond);

void csv_rows(benchmark::State& state) {
  const Files files = large_club(1000000);
  for ([[maybe_unused]] auto _ : state) {
    sheets::CsvReader reader(files[2].content, ',');
    sheets::CsvRow row;
    std::size_t cells = 0;
    while (reader.next(row) == sheets::CsvReader::Step::row) {
      cells += row.cells.size();
    }
    benchmark::DoNotOptimize(cells);
  }
  state.SetBytesProcessed(state.iterations() * static_cast<std::int64_t>(files[2].content.size()));
}
BENCHMARK(csv_rows)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
