#pragma once

#include "baize/services/sheets_port.h"
#include "baize/services/weather_port.h"

#include <string>
#include <vector>

namespace baize::services {

/// A weather file, and how it was understood.
struct WeatherFile {
  WeatherMapping mapping;
  WeatherReading reading;
};

/// Reads a weather file with its guessed mapping and the user's corrections, lines as
/// WeatherFiles::show gives them. Every problem and remark names the file. Refuses what
/// WeatherFiles::guess and corrected refuse.
units::Result<WeatherFile> read_weather_file(const WeatherFiles& files, const ReceivedFile& file,
                                             const std::vector<std::string>& corrections);

} // namespace baize::services
