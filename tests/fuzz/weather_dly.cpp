#include "weather_laws.h"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace baize;
  const std::string content(data, data + size);
  services::WeatherMapping mapping;
  mapping.format = "ghcn_dly";
  weather_files::check_laws(weather_files::Reader().read(content, mapping));
  weather_files::check_guess(content);
  return 0;
}
