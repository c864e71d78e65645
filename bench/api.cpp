// How long a page waits for its data: a club of 19 greens, 3 years, 250 visits
// a year at each green (14,250 visits). p50 and p99 in milliseconds.
#include "baize/demo/demo_club.h"
#include "unit/api_club.h"
#include "unit/api_fakes.h"
#include "unit/api_wire.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <algorithm>
#include <cctype>
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

/// The demo club, and what its pages ask for first.
struct Demo {
  Demo() : club(baize::demo::make()), world(club.records, club.weather) {
    const std::string id = "/api/v1/clubs/" + club.records.club.id;
    const std::string year = baize::units::iso(club.today).substr(0, 4);
    for (const std::string& path :
         {id + "/greens", id + "/greens/" + club.records.greens.front().id + "/years/" + year,
          id + "/works/" + encoded(club.records.works.front().id), id + "/methods"}) {
      targets.push_back(path + "?today=" + baize::units::iso(club.today));
    }
  }
  static std::string encoded(const std::string& id) {
    std::string text;
    for (const char c : id) {
      const bool plain = std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '-';
      text += plain ? std::string(1, c) : fmt::format("%{:02X}", static_cast<unsigned char>(c));
    }
    return text;
  }
  baize::demo::DemoClub club;
  made::World world;
  std::vector<std::string> targets;
};

/// Each page's answer, worked out anew every time but for the club in memory.
void the_demo_club(benchmark::State& state) {
  static const Demo demo;
  const std::string& target = demo.targets[static_cast<std::size_t>(state.range(0))];
  state.SetLabel(target);
  int status = 0;
  timed(state, [&] { status = demo.world.get(target).status; });
  if (status != 200) {
    state.SkipWithError("refused");
  }
}
BENCHMARK(the_demo_club)->DenseRange(0, 3)->Unit(benchmark::kMillisecond)->Iterations(100);

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
