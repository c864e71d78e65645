#include "clock.h"

#include <fmt/format.h>

#include <chrono>
#include <ctime>

namespace baize::apps {

units::Day today() {
  const std::time_t seconds =
      std::chrono::system_clock::to_time_t(std::chrono::system_clock::now());
  std::tm local{};
  ::localtime_r(&seconds, &local);
  constexpr int kYearOfTm = 1900;
  return units::make_day(local.tm_year + kYearOfTm, local.tm_mon + 1, local.tm_mday)
      .value_or(units::Day{});
}

std::string now() {
  const std::time_t seconds =
      std::chrono::system_clock::to_time_t(std::chrono::system_clock::now());
  std::tm utc{};
  ::gmtime_r(&seconds, &utc);
  constexpr int kYearOfTm = 1900;
  return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}Z", utc.tm_year + kYearOfTm,
                     utc.tm_mon + 1, utc.tm_mday, utc.tm_hour, utc.tm_min, utc.tm_sec);
}

} // namespace baize::apps
