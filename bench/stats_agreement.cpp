#include "baize/stats/area_under_curve.h"
#include "baize/stats/binomial.h"
#include "baize/stats/bland_altman.h"
#include "baize/stats/concordance.h"
#include "baize/stats/descriptive.h"
#include "baize/stats/distributions.h"
#include "baize/stats/fleiss_kappa.h"
#include "baize/stats/icc.h"
#include "baize/stats/kappa.h"
#include "baize/stats/krippendorff.h"
#include "baize/stats/studentized_range.h"

#include <benchmark/benchmark.h>

#include <numeric>

namespace {

using namespace baize;

constexpr std::size_t kRolls = 200;

std::vector<double> scores(std::size_t seed) {
  std::vector<double> all;
  for (std::size_t i = 0; i < kRolls; ++i) {
    all.push_back(static_cast<double>(5 + (i * 7 + i / 11) % 5 + (i * seed) % 2));
  }
  return all;
}

stats::Ratings ratings() {
  const auto a = scores(1);
  const auto b = scores(3);
  const auto c = scores(6);
  stats::Ratings all;
  for (std::size_t i = 0; i < kRolls; ++i) {
    all.push_back({a[i], b[i], c[i]});
  }
  return all;
}

void bland_altman_of_200_rolls(benchmark::State& state) {
  const auto a = scores(1);
  const auto b = scores(6);
  for (auto _ : state) {
    benchmark::DoNotOptimize(stats::bland_altman(a, b));
  }
}
BENCHMARK(bland_altman_of_200_rolls);

void concordance_of_200_rolls(benchmark::State& state) {
  const auto a = scores(1);
  const auto b = scores(6);
  for (auto _ : state) {
    benchmark::DoNotOptimize(stats::concordance(a, b));
  }
}
BENCHMARK(concordance_of_200_rolls);

void quadratic_kappa_of_ten_scores(benchmark::State& state) {
  stats::Table table(10, std::vector<double>(10, 1));
  for (std::size_t i = 0; i < table.size(); ++i) {
    table[i][i] = 20;
  }
  for (auto _ : state) {
    benchmark::DoNotOptimize(stats::cohen_kappa(table, stats::KappaWeights::quadratic));
  }
}
BENCHMARK(quadratic_kappa_of_ten_scores);

void fleiss_kappa_of_200_rolls(benchmark::State& state) {
  std::vector<std::vector<double>> counts;
  for (std::size_t i = 0; i < kRolls; ++i) {
    const auto first = static_cast<double>(i % 4);
    counts.push_back({first, 3 - first, 1});
  }
  for (auto _ : state) {
    benchmark::DoNotOptimize(stats::fleiss_kappa(counts));
  }
}
BENCHMARK(fleiss_kappa_of_200_rolls);

void icc_of_200_rolls_by_three(benchmark::State& state) {
  const auto all = ratings();
  for (auto _ : state) {
    benchmark::DoNotOptimize(stats::intraclass_correlation(all));
  }
}
BENCHMARK(icc_of_200_rolls_by_three);

void ordinal_alpha_of_200_rolls_by_three(benchmark::State& state) {
  std::vector<std::vector<std::optional<double>>> all;
  for (const auto& row : ratings()) {
    all.emplace_back(row.begin(), row.end());
  }
  for (auto _ : state) {
    benchmark::DoNotOptimize(stats::krippendorff_alpha(all, stats::AlphaMetric::ordinal));
  }
}
BENCHMARK(ordinal_alpha_of_200_rolls_by_three);

void description_of_200_rolls(benchmark::State& state) {
  const auto a = scores(1);
  for (auto _ : state) {
    benchmark::DoNotOptimize(stats::describe(a));
  }
}
BENCHMARK(description_of_200_rolls);

void area_of_200_readings(benchmark::State& state) {
  const auto a = scores(1);
  std::vector<double> times(kRolls);
  std::iota(times.begin(), times.end(), 0.0);
  for (auto _ : state) {
    benchmark::DoNotOptimize(stats::area_under_curve(times, a));
  }
}
BENCHMARK(area_of_200_readings);

void clopper_pearson_of_a_year(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(stats::clopper_pearson(281, 365));
  }
}
BENCHMARK(clopper_pearson_of_a_year);

void wilson_of_a_year(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(stats::wilson(281, 365));
  }
}
BENCHMARK(wilson_of_a_year);

void t_quantile(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(stats::t_quantile(0.975, 17));
  }
}
BENCHMARK(t_quantile);

void studentized_range_tail(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(stats::studentized_range_upper(3.5, 5, 20));
  }
}
BENCHMARK(studentized_range_tail);

void studentized_range_critical_value(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(stats::studentized_range_critical(0.05, 5, 20));
  }
}
BENCHMARK(studentized_range_critical_value);

} // namespace
