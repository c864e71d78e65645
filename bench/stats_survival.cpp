// Recovery times of a thousand works, each seen on visits only: the curve and the
// regression.
#include "baize/stats/aft.h"
#include "baize/stats/aft_frailty.h"
#include "baize/stats/kaplan_meier.h"
#include "baize/stats/turnbull.h"

#include <benchmark/benchmark.h>

#include <cstdint>
#include <fstream>
#include <limits>
#include <sstream>
#include <string>

namespace {

using namespace baize::stats;

std::vector<AftObservation> works(std::int64_t count) {
  std::vector<AftObservation> result;
  for (std::int64_t i = 0; i < count; ++i) {
    const auto left = static_cast<double>(3 + (i * 7) % 31);
    const auto wide = static_cast<double>(1 + (i * 5) % 9);
    const double right = i % 6 == 0 ? std::numeric_limits<double>::infinity() : left + wide;
    result.push_back({{left, right}, {static_cast<double>(i % 2), static_cast<double>(i % 11)}});
  }
  return result;
}

void curve(benchmark::State& state) {
  std::vector<CensoredTime> times;
  for (const AftObservation& one : works(state.range(0))) {
    times.push_back(one.time);
  }
  for (auto _ : state) {
    const auto found = turnbull(times);
    if (!found.summary.usable) {
      state.SkipWithError(found.summary.message.c_str());
      break;
    }
    benchmark::DoNotOptimize(found.support.data());
  }
}
BENCHMARK(curve)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond);

void product_limit(benchmark::State& state) {
  std::vector<FollowUp> times;
  for (const AftObservation& one : works(state.range(0))) {
    times.push_back({one.time.left, !one.time.right_censored()});
  }
  for (auto _ : state) {
    benchmark::DoNotOptimize(kaplan_meier(times).steps.data());
  }
}
BENCHMARK(product_limit)->Arg(1000)->Unit(benchmark::kMillisecond);

void regression(benchmark::State& state) {
  const auto observations = works(1000);
  const AftOptions options{static_cast<AftDistribution>(state.range(0))};
  for (auto _ : state) {
    const auto found = fit_aft(observations, options);
    if (!found.summary.usable) {
      state.SkipWithError(found.summary.message.c_str());
      break;
    }
    benchmark::DoNotOptimize(found.coefficients.data());
  }
}
BENCHMARK(regression)->DenseRange(0, 3)->Unit(benchmark::kMillisecond);

/// The 731 rows that bench/peers/survival.R gives to R as well.
std::vector<AftObservation> diabetes() {
  std::ifstream in(BAIZE_SOURCE_DIR
                   "/tests/reference/data/statistics/survival/interval_diabetes.csv");
  std::vector<AftObservation> rows;
  std::string line;
  std::getline(in, line);
  while (std::getline(in, line)) {
    std::istringstream parts(line);
    std::string name;
    std::string left;
    std::string right;
    std::string group;
    std::getline(parts, name, ',');
    std::getline(parts, left, ',');
    std::getline(parts, right, ',');
    std::getline(parts, group);
    const double end = right == "Inf" ? std::numeric_limits<double>::infinity() : std::stod(right);
    rows.push_back({{std::stod(left), end}, {group.starts_with("\"male") ? 1.0 : 0.0}});
  }
  return rows;
}

void diabetes_curve(benchmark::State& state) {
  std::vector<CensoredTime> times;
  for (const AftObservation& one : diabetes()) {
    times.push_back(one.time);
  }
  for (auto _ : state) {
    benchmark::DoNotOptimize(turnbull(times).support.data());
  }
}
BENCHMARK(diabetes_curve);

void diabetes_regression(benchmark::State& state, AftDistribution distribution) {
  const auto rows = diabetes();
  for (auto _ : state) {
    benchmark::DoNotOptimize(fit_aft(rows, {distribution}).coefficients.data());
  }
}
BENCHMARK_CAPTURE(diabetes_regression, weibull, AftDistribution::weibull);
BENCHMARK_CAPTURE(diabetes_regression, log_normal, AftDistribution::log_normal);
BENCHMARK_CAPTURE(diabetes_regression, log_logistic, AftDistribution::log_logistic);

/// 36 works on 19 greens each.
void regression_with_clusters(benchmark::State& state) {
  const auto observations = works(684);
  std::vector<int> clusters;
  for (std::size_t i = 0; i < observations.size(); ++i) {
    clusters.push_back(static_cast<int>(i / 19));
  }
  for (auto _ : state) {
    const auto found = fit_aft_frailty(observations, clusters, {{AftDistribution::log_logistic}});
    benchmark::DoNotOptimize(found.effects.data());
  }
}
BENCHMARK(regression_with_clusters)->Unit(benchmark::kMillisecond);

} // namespace
