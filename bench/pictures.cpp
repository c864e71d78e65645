// Looking at a photo before it is kept, and reading it from a file of entries.
#include "baize/entries_json/entries.h"
#include "baize/pictures/jpeg.h"
#include "unit/photo_samples.h"

#include <benchmark/benchmark.h>

namespace {

using namespace baize;

void look_at_a_photo(benchmark::State& state) {
  const std::string picture = photo_test::jpeg(1600, static_cast<int>(state.range(0)));
  const pictures::Jpeg jpeg;
  for (auto _ : state) {
    benchmark::DoNotOptimize(jpeg.look(picture));
  }
  state.SetBytesProcessed(state.iterations() * static_cast<std::int64_t>(picture.size()));
}
BENCHMARK(look_at_a_photo)->Arg(1200);

void read_a_file_with_ten_photos(benchmark::State& state) {
  entries_json::Package package;
  package.phone = photo_test::kPhone;
  package.sent_at = "2026-05-03T08:00:00Z";
  package.pictures.assign(10, {photo_test::kPhoto, photo_test::jpeg(1600, 1200)});
  const std::string text = entries_json::write_package(package);
  for (auto _ : state) {
    benchmark::DoNotOptimize(entries_json::read_package(text));
  }
  state.SetBytesProcessed(state.iterations() * static_cast<std::int64_t>(text.size()));
}
BENCHMARK(read_a_file_with_ten_photos)->Unit(benchmark::kMillisecond);

} // namespace
