#pragma once

#include "baize/climate/weather.h"
#include "baize/units/problem.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace baize::services {

/// How a weather file is to be read: guessed from its first lines, shown to the
/// user, and corrected by them. For the fixed public formats only `format` counts.
struct WeatherMapping {
  std::string format; ///< "ghcn_dly", "ghcn_wide", "ghcn_long", "delimited"
  char delimiter = ',';
  char decimal = '.';
  int header_lines = 1;
  /// "iso", "yyyymmdd", "day_month_year", "month_day_year", "three_columns" (columns
  /// year, month, day); "unknown" where no day above 12 proves the order: the user must say.
  std::string date_style;
  /// Our field (tmin_c, rain_mm, day ...) -> their header, or #3 for the third column.
  std::map<std::string, std::string> columns;
  /// Our field -> factor, where theirs is in another unit (0.1).
  std::map<std::string, double> scale;
  /// Our field -> their unit as understood: "C", "F", "mm", "in"; "unknown" where
  /// neither the header nor the values tell: the user must say.
  std::map<std::string, std::string> unit;
  std::optional<double> wind_height_m; ///< where the file states the height of its wind column
  friend bool operator==(const WeatherMapping&, const WeatherMapping&) = default;
};

struct WeatherReading {
  climate::Weather weather;
  std::vector<units::Problem> problems; ///< the file cannot be used as it is; nothing may be kept
  std::vector<units::Problem>
      remarks; ///< by date: gaps, duplicates, swapped, impossible, failed checks
  int rows = 0;
};

class WeatherFiles {
 public:
  WeatherFiles() = default;
  WeatherFiles(const WeatherFiles&) = delete;
  WeatherFiles& operator=(const WeatherFiles&) = delete;
  virtual ~WeatherFiles() = default;

  /// Refuses "not_a_weather_file" when no date or no temperature can be found.
  virtual units::Result<WeatherMapping> guess(const std::string& content) const = 0;
  virtual WeatherReading read(const std::string& content, const WeatherMapping& mapping) const = 0;
  /// A mapping as lines "name=value", the very lines that `corrected` takes.
  virtual std::vector<std::string> show(const WeatherMapping& mapping) const = 0;
  /// The mapping with the lines put in, in their order. Refuses a line that is none,
  /// and settings and values that cannot be.
  virtual units::Result<WeatherMapping>
  corrected(WeatherMapping mapping, const std::vector<std::string>& corrections) const = 0;
};

} // namespace baize::services
