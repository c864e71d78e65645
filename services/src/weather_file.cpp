#include "baize/services/weather_file.h"

namespace baize::services {

namespace {

std::string within(const std::string& file, const std::string& place) {
  return place.empty() ? file : file + " " + place;
}

} // namespace

units::Result<WeatherFile> read_weather_file(const WeatherFiles& files, const ReceivedFile& file,
                                             const std::vector<std::string>& corrections) {
  auto mapping = files.guess(file.content);
  if (mapping && !corrections.empty()) {
    mapping = files.corrected(std::move(*mapping), corrections);
  }
  if (!mapping) {
    units::Problem problem = mapping.error();
    problem.place = within(file.name, problem.place);
    return tl::unexpected(problem);
  }
  WeatherFile read{*mapping, files.read(file.content, *mapping)};
  for (auto* list : {&read.reading.problems, &read.reading.remarks}) {
    for (units::Problem& problem : *list) {
      problem.place = within(file.name, problem.place);
    }
  }
  return read;
}

} // namespace baize::services
