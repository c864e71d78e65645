#pragma once

#include "baize/services/weather_port.h"

namespace baize::weather_files {

/// Reads daily weather from the bytes of one file: GHCN-Daily (.dly, and its
/// by-station tables, wide and long) and any delimited table of days. Nothing is
/// filled in and nothing is left out without a remark by date or line.
class Reader : public services::WeatherFiles {
 public:
  /// Refuses "not_a_weather_file" where no date or no temperature can be found,
  /// "not_text" (UTF-16 or NUL bytes) and "file_too_large" (over 64 MB).
  units::Result<services::WeatherMapping> guess(const std::string& content) const override;
  /// With problems, the weather is empty.
  services::WeatherReading read(const std::string& content,
                                const services::WeatherMapping& mapping) const override;
  /// As weather_files::show and weather_files::corrected (mapping.h).
  std::vector<std::string> show(const services::WeatherMapping& mapping) const override;
  units::Result<services::WeatherMapping>
  corrected(services::WeatherMapping mapping,
            const std::vector<std::string>& corrections) const override;
};

} // namespace baize::weather_files
