#include "baize/climate/evapotranspiration.h"
#include "baize/climate/growth.h"

#include <benchmark/benchmark.h>

namespace {

using namespace baize;

climate::Weather thousand_days() {
  climate::Weather weather;
  for (int i = 0; i < 1000; ++i) {
    climate::WeatherDay day;
    day.day = units::Day{12000 + i};
    day.tmin_c = 5 + i % 11;
    day.tmax_c = 14 + i % 17;
    day.dew_point_c = 4 + i % 7;
    day.wind_m_s = 1 + i % 5;
    day.wind_height_m = 10;
    day.solar_mj_m2 = 8 + i % 15;
    weather[day.day] = day;
  }
  return weather;
}

void et0_of_1000_days(benchmark::State& state) {
  const auto weather = thousand_days();
  for (auto _ : state) {
    double sum = 0;
    for (const auto& [day, one] : weather) {
      sum += climate::reference_et0(climate::et0_inputs(one, 52.0, 20.0))->et0_mm;
    }
    benchmark::DoNotOptimize(sum);
  }
}
BENCHMARK(et0_of_1000_days);

void et0_of_1000_days_from_temperature(benchmark::State& state) {
  auto weather = thousand_days();
  for (auto& [day, one] : weather) {
    one.dew_point_c.reset();
    one.wind_m_s.reset();
    one.solar_mj_m2.reset();
  }
  for (auto _ : state) {
    double sum = 0;
    for (const auto& [day, one] : weather) {
      sum += climate::reference_et0(climate::et0_inputs(one, 52.0, 20.0))->et0_mm;
    }
    benchmark::DoNotOptimize(sum);
  }
}
BENCHMARK(et0_of_1000_days_from_temperature);

void growth_days_of_1000_days(benchmark::State& state) {
  const auto weather = thousand_days();
  for (auto _ : state) {
    benchmark::DoNotOptimize(
        climate::growth_days(weather, units::Day{12000}, units::Day{13000}, climate::kCoolSeason));
  }
}
BENCHMARK(growth_days_of_1000_days);

} // namespace
