#include "baize/weather_files/reader.h"

#include "baize/weather_files/mapping.h"
#include "delimited.h"
#include "ghcn_parts.h"
#include "text.h"

#include <utility>

namespace baize::weather_files {

namespace {

/// The public format that the first lines show, or empty.
std::string public_format(std::string_view content) {
  constexpr int kLinesLookedAt = 5;
  for (Lines lines(content); lines.next() && lines.number() <= kLinesLookedAt;) {
    if (is_dly_line(lines.line())) {
      return "ghcn_dly";
    }
    const auto cells = split(lines.line(), ',');
    if (is_wide_header(cells)) {
      return "ghcn_wide";
    }
    if (is_long_row(cells)) {
      return "ghcn_long";
    }
  }
  return "";
}

bool has_temperature(const services::WeatherMapping& mapping) {
  return mapping.columns.contains("tmin_c") || mapping.columns.contains("tmax_c") ||
         mapping.columns.contains("tmean_c");
}

services::WeatherMapping public_mapping(const std::string& format, std::string_view content) {
  if (format == "ghcn_wide") {
    return wide_mapping(content);
  }
  return fixed_mapping(format,
                       format == "ghcn_dly" ? read_ghcn_dly(content) : read_ghcn_long(content));
}

services::WeatherReading read_as(std::string_view content,
                                 const services::WeatherMapping& mapping) {
  if (mapping.format == "ghcn_dly") {
    return weather_of(read_ghcn_dly(content), {});
  }
  if (mapping.format == "ghcn_long") {
    return weather_of(read_ghcn_long(content), {});
  }
  if (mapping.format == "ghcn_wide") {
    return weather_of(read_ghcn_wide(content), mapping);
  }
  if (mapping.format == "delimited") {
    return read_delimited(content, mapping);
  }
  services::WeatherReading reading;
  reading.problems.push_back({"no_such_format", "format", clipped(mapping.format),
                              "ghcn_dly, ghcn_wide, ghcn_long or delimited", ""});
  return reading;
}

} // namespace

units::Result<services::WeatherMapping> Reader::guess(const std::string& content) const {
  if (auto problem = bytes_problem(content)) {
    return units::Refusal(*problem);
  }
  const std::string format = public_format(content);
  if (format.empty()) {
    return guess_delimited(content);
  }
  auto mapping = public_mapping(format, content);
  if (!has_temperature(mapping)) {
    return units::refuse("not_a_weather_file", "file", format,
                         "a file with a temperature (TMIN, TMAX or TAVG); none was found");
  }
  return mapping;
}

services::WeatherReading Reader::read(const std::string& content,
                                      const services::WeatherMapping& mapping) const {
  services::WeatherReading reading;
  if (auto problem = bytes_problem(content)) {
    reading.problems.push_back(std::move(*problem));
    return reading;
  }
  reading = read_as(content, mapping);
  if (!reading.problems.empty()) {
    reading.weather.clear();
  }
  return reading;
}

std::vector<std::string> Reader::show(const services::WeatherMapping& mapping) const {
  return weather_files::show(mapping);
}

units::Result<services::WeatherMapping>
Reader::corrected(services::WeatherMapping mapping,
                  const std::vector<std::string>& corrections) const {
  return weather_files::corrected(std::move(mapping), corrections);
}

} // namespace baize::weather_files
