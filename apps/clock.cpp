#include "clock.h"

#include <fmt/format.h>

#include <chrono>
#include <ctime>

namespace baize::apps {

namespace {

constexpr int kYearOfTm = 1900;

/// The present as `broken_down` (localtime_r, gmtime_r) tells it.
std::tm present(std::tm* (*broken_down)(const std::time_t*, std::tm*)) {
  const std::time_t seconds =
      std::chrono::system_clock::to_time_t(std::chrono::system_clock::now());
  std::tm parts{};
  return broken_down(&seconds, &parts) == nullptr ? std::tm{} : parts;
}

} // namespace

units::Day today() {
  const std::tm local = present(::localtime_r);
  return units::make_day(local.tm_year + kYearOfTm, local.tm_mon + 1, local.tm_mday)
      .value_or(units::Day{});
}

std::int64_t seconds() {
  return std::chrono::system_clock::to_time_t(std::chrono::system_clock::now());
}

std::string now() {
  const std::tm utc = present(::gmtime_r);
  return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}Z", utc.tm_year + kYearOfTm,
                     utc.tm_mon + 1, utc.tm_mday, utc.tm_hour, utc.tm_min, utc.tm_sec);
}

} // namespace baize::apps
