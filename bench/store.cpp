// One million rolls through the store, against the same rows written straight
// into SQLite in the same run; and reading them back.
#include "baize/store_sqlite/store.h"

#include "contract/folder.h"
#include "contract/sample_club.h"

#include <benchmark/benchmark.h>
#include <sqlite3.h>

#include <chrono>

namespace {

using namespace baize;
using Clock = std::chrono::steady_clock;

constexpr int kVisits = 1000000 / 6 + 1;

double seconds_since(Clock::time_point start) {
  return std::chrono::duration<double>(Clock::now() - start).count();
}

const green::Records& records() {
  static const green::Records all = contract::large_club("large", kVisits);
  return all;
}

/// The least that could be done: every roll a row of one plain table, in one
/// transaction, on disk at the end.
double straight_seconds() {
  const contract::Folder folder;
  sqlite3* db = nullptr;
  sqlite3_open(folder.file("straight.sqlite3").c_str(), &db);
  sqlite3_exec(db,
               "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; CREATE TABLE roll (green "
               "TEXT, day INTEGER, direction INTEGER, roll_order INTEGER, distance_m REAL, score "
               "INTEGER); BEGIN",
               nullptr, nullptr, nullptr);
  sqlite3_stmt* insert = nullptr;
  sqlite3_prepare_v2(db, "INSERT INTO roll VALUES (?, ?, ?, ?, ?, ?)", -1, &insert, nullptr);
  const auto start = Clock::now();
  for (const green::Visit& visit : records().visits) {
    for (const green::Run& run : visit.runs) {
      for (const green::Roll& roll : run.rolls) {
        sqlite3_bind_text(insert, 1, visit.green.c_str(), -1, SQLITE_STATIC);
        sqlite3_bind_int(insert, 2, visit.day.since_epoch);
        sqlite3_bind_int(insert, 3, static_cast<int>(run.direction));
        sqlite3_bind_int(insert, 4, roll.order);
        sqlite3_bind_double(insert, 5, roll.distance->metres);
        sqlite3_bind_int(insert, 6, *roll.score);
        sqlite3_step(insert);
        sqlite3_reset(insert);
      }
    }
  }
  sqlite3_exec(db, "COMMIT", nullptr, nullptr, nullptr);
  const double spent = seconds_since(start);
  sqlite3_finalize(insert);
  sqlite3_close(db);
  return spent;
}

void keep_million_rolls(benchmark::State& state) {
  double straight = 0;
  double kept = 0;
  for (auto _ : state) {
    state.PauseTiming();
    straight += straight_seconds();
    const contract::Folder folder;
    auto store = store_sqlite::SqliteStore::open(folder.file("store.sqlite3")).value();
    state.ResumeTiming();
    const auto start = Clock::now();
    if (!store->keep(records(), contract::author(), {})) {
      state.SkipWithError("not kept");
      break;
    }
    kept += seconds_since(start);
  }
  const double rolls = 6.0 * kVisits * static_cast<double>(state.iterations());
  state.counters["rolls_per_s"] = rolls / kept;
  state.counters["straight_rows_per_s"] = rolls / straight;
  state.counters["times_straight"] = kept / straight;
}
BENCHMARK(keep_million_rolls)->Unit(benchmark::kMillisecond)->Iterations(2)->UseRealTime();

void keep_million_rolls_again(benchmark::State& state) {
  const contract::Folder folder;
  auto store = store_sqlite::SqliteStore::open(folder.file("store.sqlite3")).value();
  benchmark::DoNotOptimize(store->keep(records(), contract::author(), {}));
  for (auto _ : state) {
    const auto receipt = store->keep(records(), contract::author(), {});
    if (!receipt || receipt->added + receipt->corrected != 0) {
      state.SkipWithError("the same records added something");
      break;
    }
  }
}
BENCHMARK(keep_million_rolls_again)->Unit(benchmark::kMillisecond)->Iterations(2)->UseRealTime();

void load_million_rolls(benchmark::State& state) {
  const contract::Folder folder;
  auto store = store_sqlite::SqliteStore::open(folder.file("store.sqlite3")).value();
  benchmark::DoNotOptimize(store->keep(records(), contract::author(), {}));
  for (auto _ : state) {
    benchmark::DoNotOptimize(store->load("large"));
  }
}
BENCHMARK(load_million_rolls)->Unit(benchmark::kMillisecond)->Iterations(2)->UseRealTime();

void keep_one_visit(benchmark::State& state) {
  const contract::Folder folder;
  auto store = store_sqlite::SqliteStore::open(folder.file("store.sqlite3")).value();
  benchmark::DoNotOptimize(
      store->keep(contract::large_club("large", 20000), contract::author(), {}));
  green::Records one;
  one.club.id = "large";
  one.visits = {records().visits.front()};
  int number = 0;
  for (auto _ : state) {
    one.visits.front().id = "new" + std::to_string(number++);
    benchmark::DoNotOptimize(store->keep(one, contract::author(), {}));
  }
}
BENCHMARK(keep_one_visit)->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace

BENCHMARK_MAIN();
