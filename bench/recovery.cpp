// Losses and ledgers of whole clubs: 19 greens, 3 years, 250 visits a green and year, 6 rolls each.
// The time per club should not depend on the number of clubs. A thousand different clubs would not
// fit into memory, so eight invented ones take turns.
#include "baize/recovery/ledger.h"
#include "baize/recovery/work_loss.h"

#include <benchmark/benchmark.h>

#include <random>

namespace baize {
namespace {

constexpr int kGreens = 19;
constexpr int kYears = 3;
constexpr int kVisitsAYear = 250;
const units::Day kFirst{19358}; // 2023-01-01
const units::Day kLast{kFirst.since_epoch + kYears * 365};

struct Club {
  green::Records records;
  climate::Weather weather;
};

green::Run three_balls(std::mt19937& random, green::Direction direction) {
  green::Run run;
  run.spot = "main";
  run.direction = direction;
  for (int order = 1; order <= 3; ++order) {
    green::Roll roll;
    roll.order = order;
    roll.score = 5 + static_cast<int>(random() % 5);
    run.rolls.push_back(roll);
  }
  return run;
}

void add_works(green::Records& records, const std::string& kind, int every_days) {
  for (units::Day day = kFirst + every_days; day < kLast; day = day + every_days) {
    green::Work work;
    work.id = kind + std::to_string(day.since_epoch);
    work.kind = kind;
    work.day = day;
    records.works.push_back(work);
  }
}

Club invent(unsigned seed) {
  std::mt19937 random(seed);
  Club club;
  for (int g = 1; g <= kGreens; ++g) {
    green::Green green;
    green.id = std::to_string(g);
    club.records.greens.push_back(green);
    for (int v = 0; v < kYears * kVisitsAYear; ++v) {
      green::Visit visit;
      visit.id = green.id + "-" + std::to_string(v);
      visit.green = green.id;
      visit.observer = "ann";
      visit.day = kFirst + static_cast<int>(random() % (kYears * 365));
      visit.runs.push_back(three_balls(random, green::Direction::out));
      visit.runs.push_back(three_balls(random, green::Direction::back));
      club.records.visits.push_back(std::move(visit));
    }
  }
  add_works(club.records, "coring", 180);
  add_works(club.records, "verticutting", 75);
  add_works(club.records, "topdressing", 15);
  for (units::Day day = kFirst; day <= kLast; ++day) {
    club.weather[day].day = day;
    club.weather[day].tmean_c = static_cast<double>(random() % 30);
  }
  return club;
}

std::size_t whole_club(const Club& club) {
  std::size_t figures = 0;
  for (const green::Green& green : club.records.greens) {
    figures += recovery::work_losses(club.records, club.weather, green.id, kLast).size();
    for (int year = 0; year < kYears; ++year) {
      const units::Day first = kFirst + 365 * year;
      figures +=
          recovery::true_days(club.records, green.id, {first, first + 364}, kLast).days.size();
    }
  }
  return figures;
}

const std::vector<Club>& clubs() {
  static const std::vector<Club> all = [] {
    std::vector<Club> made;
    for (unsigned seed = 1; seed <= 8; ++seed) {
      made.push_back(invent(seed));
    }
    return made;
  }();
  return all;
}

void recovery_and_ledger(benchmark::State& state) {
  const auto& invented = clubs();
  const auto wanted = static_cast<std::size_t>(state.range(0));
  for (auto _ : state) {
    for (std::size_t i = 0; i < wanted; ++i) {
      benchmark::DoNotOptimize(whole_club(invented[i % invented.size()]));
    }
  }
  state.counters["per_club"] = benchmark::Counter(static_cast<double>(wanted),
                                                  benchmark::Counter::kIsIterationInvariantRate |
                                                      benchmark::Counter::kInvert);
}
BENCHMARK(recovery_and_ledger)->Arg(1)->Arg(10)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace baize

BENCHMARK_MAIN();
