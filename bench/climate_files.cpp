#include "baize/weather_files/reader.h"

#include <benchmark/benchmark.h>

#include <fstream>
#include <iterator>

namespace {

using namespace baize;

std::string brussels() {
  std::ifstream in(std::string(BAIZE_SOURCE_DIR) + "/tests/reference/data/weather/brussels.txt",
                   std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

/// Thirty years of five elements in the layout of GHCN-Daily.
std::string thirty_years() {
  std::string content;
  for (int year = 1990; year < 2020; ++year) {
    for (int month = 1; month <= 12; ++month) {
      for (const char* element : {"TMAX", "TMIN", "PRCP", "SNOW", "SNWD"}) {
        content += "XX000000001" + std::to_string(year) + (month < 10 ? "0" : "") +
                   std::to_string(month) + element;
        for (int day = 1; day <= 31; ++day) {
          const bool is = units::make_day(year, month, day).has_value();
          content +=
              is ? (element[1] == 'M' && element[2] == 'A' ? "  150  0" : "   50  0") : "-9999   ";
        }
        content += '\n';
      }
    }
  }
  return content;
}

void guess_and_read(benchmark::State& state, const std::string& content) {
  const weather_files::Reader reader;
  for (auto _ : state) {
    const auto mapping = reader.guess(content);
    const auto reading = reader.read(content, *mapping);
    if (!reading.problems.empty() || !reading.remarks.empty()) {
      state.SkipWithError("the file was not read whole");
      return;
    }
    benchmark::DoNotOptimize(reading);
  }
  state.SetBytesProcessed(static_cast<std::int64_t>(content.size()) * state.iterations());
}

void read_brussels(benchmark::State& state) {
  guess_and_read(state, brussels());
}
BENCHMARK(read_brussels)->Unit(benchmark::kMillisecond);

void read_dly_of_30_years(benchmark::State& state) {
  guess_and_read(state, thirty_years());
}
BENCHMARK(read_dly_of_30_years)->Unit(benchmark::kMillisecond);

} // namespace
