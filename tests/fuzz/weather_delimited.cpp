#include "weather_laws.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>

/// Everything up to the first zero byte is a list of corrections, one a line; the
/// rest is the file.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace baize;
  std::string content(data, data + size);
  std::vector<std::string> corrections;
  if (const auto zero = content.find('\0'); zero != std::string::npos) {
    std::size_t from = 0;
    while (from < zero) {
      const std::size_t end = std::min(content.find('\n', from), zero);
      corrections.push_back(content.substr(from, end - from));
      from = end + 1;
    }
    content.erase(0, zero + 1);
  }
  weather_files::check_guess(content);
  services::WeatherMapping start;
  start.format = "delimited";
  if (const auto guess = weather_files::Reader().guess(content)) {
    start = *guess;
  }
  if (const auto mapping = weather_files::corrected(start, corrections)) {
    weather_files::check_laws(weather_files::Reader().read(content, *mapping));
  }
  return 0;
}
