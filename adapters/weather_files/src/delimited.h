#pragma once

#include "baize/services/weather_port.h"

#include <string_view>

namespace baize::weather_files {

/// Mapping of a delimited table of days. Refuses "not_a_weather_file".
units::Result<services::WeatherMapping> guess_delimited(std::string_view content);
services::WeatherReading read_delimited(std::string_view content,
                                        const services::WeatherMapping& mapping);

} // namespace baize::weather_files
