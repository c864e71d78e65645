// How long a page waits for its data: a club of 19 greens, 3 years, 250 visits
// a year at each green (14,250 visits). p50 and p99 in milliseconds.
#include "unit/api_club.h"
#include "unit/api_fakes.h"
#include "unit/api_wire.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <vector>

namespace {

constexpr made::Size kSize{19, 3, 250};

const made::World& world() {
  static const made::World made(made::club(kSize), made::weather(kSize));
  return made;
}

const std::string kClub = "/api/v1/clubs/c%2F1";
const std::vector<std::string> kTargets{kClub + "/greens", kClub + "/greens/7/years/2025",
                                        kClub + "/works", kClub + "/works/2024%2F7%3Acoring",
                                        kClub + "/visits?green=7"};

/// Runs `once` and reports where half and all but a hundredth of the times lie.
template <class Once> void timed(benchmark::State& state, const Once& once) {
  std::vector<double> ms;
  for (auto _ : state) {
    const auto begin = std::chrono::steady_clock::now();
    once();
    ms.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin)
                     .count());
  }
  std::sort(ms.begin(), ms.end());
  state.counters["p50_ms"] = ms[ms.size() / 2];
  state.counters["p99_ms"] = ms[ms.size() * 99 / 100];
}

void in_process(benchmark::State& state) {
  const std::string& target = kTargets[static_cast<std::size_t>(state.range(0))];
  state.SetLabel(target);
  std::size_t bytes = 0;
  timed(state, [&] { bytes = world().get(target).body.size(); });
  state.counters["bytes"] = static_cast<double>(bytes);
}
BENCHMARK(in_process)->DenseRange(0, 4)->Unit(benchmark::kMillisecond)->Iterations(200);

void through_the_socket(benchmark::State& state) {
  const std::string& target = kTargets[static_cast<std::size_t>(state.range(0))];
  state.SetLabel(target);
  const wire::Server server(
      [](const baize::api::Request& request) { return answer(world().context, request); });
  const std::string request = wire::get(target);
  wire::Client client(server.port());
  timed(state, [&] {
    client.send(request);
    benchmark::DoNotOptimize(client.answer());
  });
}
BENCHMARK(through_the_socket)
    ->DenseRange(0, 4)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(200)
    ->UseRealTime();

/// The server's own share: an answer that costs nothing, with 500 idle clients.
void an_empty_answer(benchmark::State& state) {
  baize::api::ServerOptions options;
  options.most_connections = 1000;
  const wire::Server server(
      [](const baize::api::Request&) {
        return baize::api::Response{200, "text/plain", "x", true, {}};
      },
      options);
  std::vector<std::unique_ptr<wire::Client>> idle;
  for (int i = 0; i < state.range(0); ++i) {
    idle.push_back(std::make_unique<wire::Client>(server.port()));
  }
  const std::string request = wire::get("/");
  wire::Client client(server.port());
  timed(state, [&] {
    client.send(request);
    benchmark::DoNotOptimize(client.answer());
  });
}
BENCHMARK(an_empty_answer)
    ->Arg(0)
    ->Arg(500)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(2000)
    ->UseRealTime();

/// A body of this many megabytes read and checked.
void import_body(benchmark::State& state) {
  const std::string body = R"({"files":[{"name":"rolls.csv","content":")" +
                           std::string(static_cast<std::size_t>(state.range(0)) << 20U, 'x') +
                           R"("}]})";
  timed(state, [&] {
    benchmark::DoNotOptimize(world().ask("POST", kClub + "/import?dry_run=true", body));
  });
  state.SetBytesProcessed(state.iterations() * static_cast<std::int64_t>(body.size()));
}
BENCHMARK(import_body)->Arg(1)->Arg(16)->Unit(benchmark::kMillisecond);

} // namespace
