#pragma once

#include "baize/weather_files/mapping.h"
#include "baize/weather_files/reader.h"
#include "must.h"

#include <cmath>

namespace baize::weather_files {

inline void finite(const std::optional<double>& value, double lowest, double highest) {
  must(!value || (std::isfinite(*value) && *value >= lowest && *value <= highest));
}

/// Whatever the bytes, these hold of a reading.
inline void check_laws(const services::WeatherReading& reading) {
  must(reading.problems.empty() || reading.weather.empty());
  must(!reading.problems.empty() || !reading.weather.empty());
  for (const auto& [key, day] : reading.weather) {
    must(key == day.day);
    finite(day.tmin_c, -90, 60);
    finite(day.tmax_c, -90, 60);
    finite(day.rain_mm, 0, 2000);
    finite(day.wind_m_s, 0, 115);
    must(!day.tmin_c || !day.tmax_c || *day.tmin_c <= *day.tmax_c);
    must(!day.rain_trace || day.rain_mm == 0.0);
  }
  for (const auto& remark : reading.remarks) {
    must(!remark.code.empty() && !remark.place.empty() == (remark.code != "more_lines"));
    must(!units::sentence(remark).empty());
  }
}

/// Guessing and reading, twice the same; the shown mapping can be given back.
inline void check_guess(const std::string& content) {
  const Reader reader;
  const auto mapping = reader.guess(content);
  if (!mapping) {
    must(!mapping.error().code.empty());
    return;
  }
  const auto back = corrected(services::WeatherMapping{}, show(*mapping));
  must(back.has_value());
  must(*back == *mapping);
  const auto reading = reader.read(content, *mapping);
  check_laws(reading);
  must(reading.weather == reader.read(content, *mapping).weather);
}

} // namespace baize::weather_files
