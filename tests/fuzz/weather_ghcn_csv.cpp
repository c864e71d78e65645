#include "weather_laws.h"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace baize;
  const std::string content(data, data + size);
  for (const char* format : {"ghcn_wide", "ghcn_long"}) {
    services::WeatherMapping mapping;
    mapping.format = format;
    weather_files::check_laws(weather_files::Reader().read(content, mapping));
  }
  weather_files::check_guess(content);
  return 0;
}
