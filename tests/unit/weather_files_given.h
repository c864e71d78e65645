#pragma once

#include "baize/weather_files/mapping.h"
#include "baize/weather_files/reader.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace baize::weather_files {

inline units::Day on(const std::string& iso_day) {
  return *units::parse_iso_day(iso_day);
}

/// Guessed, corrected and read in one go.
inline services::WeatherReading read_with(const std::string& content,
                                          const std::vector<std::string>& corrections = {}) {
  const Reader reader;
  const auto mapping = reader.guess(content);
  EXPECT_TRUE(mapping) << units::sentence(mapping.error());
  const auto better = corrected(mapping.value_or(services::WeatherMapping{}), corrections);
  EXPECT_TRUE(better) << units::sentence(better.error());
  return reader.read(content, *better);
}

inline std::vector<std::string> sentences(const std::vector<units::Problem>& problems) {
  std::vector<std::string> result;
  for (const auto& one : problems) {
    result.push_back(units::sentence(one));
  }
  return result;
}

inline std::vector<std::string> codes(const std::vector<units::Problem>& problems) {
  std::vector<std::string> result;
  for (const auto& one : problems) {
    result.push_back(one.code);
  }
  return result;
}

} // namespace baize::weather_files
